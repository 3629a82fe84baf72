import type { Finding } from '@/core/finding'
import type { Outcome } from '@/core/outcome'
import type { Unit } from '@/core/quantity'
import { UNITS } from '@/core/quantity'
import type { Take } from './worked-example'

/** What a model calls an input, and between which ends, in which unit, it takes it. */
export interface Range {
  readonly input: string
  readonly from: number
  readonly to: number
  readonly unit: Unit
}

/**
 * The ranges a model holds itself to, as it says them when one number after the other is none. A list's members are
 * said once.
 */
export function rangesOf(work: (n: Take) => Outcome<unknown>): readonly Range[] {
  const count = calls(work)
  const found = new Map<string, Range>()
  for (let broken = 0; broken < count; broken++) {
    let call = 0
    const outcome = work((usual) => (call++ === broken ? NaN : usual))
    for (const finding of outcome.findings) {
      const range = rangeOf(finding)
      if (range && !found.has(range.input)) found.set(range.input, range)
    }
  }
  return [...found.values()]
}

function calls(work: (n: Take) => Outcome<unknown>): number {
  let count = 0
  work((usual) => {
    count++
    return usual
  })
  return count
}

function rangeOf(finding: Finding): Range | undefined {
  if (finding.code !== 'outside-model' || !Number.isNaN(finding.at)) return undefined
  const { input, bounds, unit } = finding
  const { si } = UNITS[unit]
  const { min, max } = bounds
  return { input: input.replace(/(?<= )\d+\b/g, 'n'), from: min / si, to: max / si, unit }
}
