import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { arrowFigures } from '@/core/arrow/arrow-figures'
import type { Outcome } from '@/core/outcome'
import { newtonSquareMetres } from '@/core/quantity'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { liftOpenInputs } from '@/headless/lift-open-inputs'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'
import { anyNumber, expectHonest } from '@tests/support/honest'
import { OPEN_EXAMPLE } from './open-example'

/** The same value with some of its numbers, counted from the first, changed for others. */
function withNumbers<T>(value: T, changes: ReadonlyMap<number, number>): T {
  let at = 0
  const walk = (part: unknown): unknown => {
    if (typeof part === 'number') return changes.get(at++) ?? part
    if (Array.isArray(part)) return part.map(walk)
    return typeof part === 'object' && part !== null
      ? Object.fromEntries(Object.entries(part).map(([key, inside]) => [key, walk(inside)]))
      : part
  }
  return walk(value) as T
}
const numbersIn = (value: unknown): number => {
  let count = 0
  JSON.stringify(value, (_, part: unknown) => {
    if (typeof part === 'number') count++
    return part
  })
  return count
}

const isOutcome = (value: unknown): value is Outcome<unknown> =>
  typeof value === 'object' && value !== null && 'ok' in value && 'findings' in value

/** Every outcome among the figures, one level down in what is a bundle of them. */
const outcomesOf = (figures: object): readonly Outcome<unknown>[] =>
  Object.values(figures).flatMap((each: unknown) =>
    isOutcome(each) ? [each] : typeof each === 'object' && each !== null ? Object.values(each).filter(isOutcome) : [],
  )

const changesOf = (value: unknown) =>
  fc
    .array(fc.tuple(fc.nat({ max: numbersIn(value) - 1 }), anyNumber), { minLength: 1, maxLength: 6 })
    .map((pairs) => new Map(pairs))

const OPEN_SHEETS = 5000
/** Of those with stock, forecast and trim; ten times as long each. 5,000 in a release run. */
const SHOP_SHEETS = Number(process.env['SHEET_RUNS'] ?? 1000)

describe('whole sheets with any numbers in them give finite figures or findings', () => {
  it('as a shop keeps them', { timeout: 300_000 }, () => {
    const sheet = demoSheet({ c2cIn: 27.5, targetGr: 825, quantity: 2 }, USUAL_LINES, {
      chronograph: OPEN_EXAMPLE.bow.chronograph,
      ratedSpeedFps: 335,
      braceHeightIn: 6.75,
    })
    let answered = 0
    fc.assert(
      fc.property(changesOf(sheet), (changes) => {
        const told = withNumbers(sheet, changes)
        // How many arrows is a whole number from 1 to 12 by the form and by the schema; an array has no other length.
        const figures = sheetFigures({ ...told, plan: { ...told.plan, quantity: sheet.plan.quantity } })
        if (figures === undefined) return
        // `lifted` is no figure: it hands the arrow on as it was told, for the models to refuse.
        const { lifted: _, ...shown } = figures
        const outcomes = outcomesOf(shown)
        for (const outcome of outcomes) expectHonest(outcome)
        answered += outcomes.filter(({ ok }) => ok).length
      }),
      { numRuns: SHOP_SHEETS },
    )
    expect(answered).toBeGreaterThan(SHOP_SHEETS)
  })

  it('as the open format tells them', { timeout: 60_000 }, () => {
    let answered = 0
    fc.assert(
      fc.property(changesOf(OPEN_EXAMPLE), fc.option(anyNumber), (changes, rigidity) => {
        const told = withNumbers(OPEN_EXAMPLE, changes)
        const inputs = liftOpenInputs({ ...told, format: 'grainwright.inputs/1' }, newtonSquareMetres(rigidity ?? 12))
        const outcomes = outcomesOf(arrowFigures(inputs))
        for (const outcome of outcomes) expectHonest(outcome)
        answered += outcomes.filter(({ ok }) => ok).length
      }),
      { numRuns: OPEN_SHEETS },
    )
    expect(answered).toBeGreaterThan(OPEN_SHEETS)
  })
})
