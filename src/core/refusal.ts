import { type Finding, outsideModel } from './finding'
import { type Bounds, type NoAnswer, noAnswer, within } from './outcome'
import type { Dimension, Quantity, UnitOf } from './quantity'

/** No finding for an input within its bounds, one for an input outside them (NaN always is). */
export const outside = <D extends Dimension>(
  input: string,
  at: Quantity<D>,
  bounds: Bounds<Quantity<D>>,
  unit: UnitOf<D>,
): readonly Finding[] => (within(at, bounds) ? [] : [outsideModel(input, at, bounds, unit)])

/** What a model answers to inputs it cannot take: every finding at once, or nothing when there is none. */
export function refusal(findings: readonly Finding[]): NoAnswer | undefined {
  const [first, ...rest] = findings
  return first && noAnswer(first, ...rest)
}
