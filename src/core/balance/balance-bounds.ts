import { bounds } from '../outcome'
import { grains, inches, ratio } from '../quantity'

/** Where balance and FOC are worked out: far beyond any arrow. */
export const BALANCE_BOUNDS = Object.freeze({
  length: bounds(inches(4), inches(80)),
  place: bounds(inches(-24), inches(120)),
  partWeight: bounds(grains(0), grains(10_000)),
  weight: bounds(grains(1), grains(100_000)),
  weightSd: bounds(grains(0), grains(10_000)),
  placeSd: bounds(inches(0), inches(10)),
  /** The smallest step a rule is read to. */
  step: bounds(inches(1e-5), inches(1)),
  balance: bounds(inches(-24), inches(120)),
  foc: bounds(ratio(-1), ratio(2)),
})
