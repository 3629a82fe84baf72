import type { Bounds, NoAnswer } from '../outcome'
import { bounds, noAnswer, within } from '../outcome'
import type { Dimension, Quantity, UnitOf } from '../quantity'
import { sameDimension } from '../quantity'
import { outsideModel } from '../finding'

const FURTHEST = 1e9 // SI; beyond anything a shop measures, and far from where sums of squares overflow

/** What a value of a list may be, in its own dimension. */
export const valueBounds = <D extends Dimension>(like: Quantity<D> | undefined): Bounds<Quantity<D>> =>
  bounds(sameDimension(like, -FURTHEST), sameDimension(like, FURTHEST))

/** The answer to a list that holds something that is no number a shop can have measured, or nothing. */
export function badValue<D extends Dimension>(values: readonly Quantity<D>[], unit: UnitOf<D>): NoAnswer | undefined {
  const range = valueBounds(values[0])
  const bad = values.find((value) => !within(value, range))
  return bad === undefined ? undefined : noAnswer(outsideModel('value', bad, range, unit))
}
