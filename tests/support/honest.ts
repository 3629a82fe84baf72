import fc from 'fast-check'
import { expect } from 'vitest'
import type { Outcome } from '@/core/outcome'

/** Any number that someone, or a broken file, may hand in: sensible, zero, negative, huge, tiny, none at all. */
export const anyNumber = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: 0.01, max: 1000, noNaN: true }) },
  { weight: 2, arbitrary: fc.double() },
  {
    weight: 1,
    arbitrary: fc.constantFrom(0, -0, -1, NaN, Infinity, -Infinity, 1e300, -1e300, 5e-324, Number.MAX_VALUE),
  },
)

/** Every number inside a value, however deep. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

/** An outcome either has only finite numbers in its value and its working, or says why it has no value. */
export function expectHonest(outcome: Outcome<unknown>): void {
  if (!outcome.ok) {
    expect(outcome.findings.length).toBeGreaterThan(0)
    return
  }
  const shown = [...outcome.derivation.inputs, ...outcome.derivation.result].map((term) => term.value)
  const broken = [...numbersIn(outcome.value), ...shown].filter((n) => !Number.isFinite(n))
  expect(broken).toEqual([])
}
