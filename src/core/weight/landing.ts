import { normalCdf } from '../numeric/distributions/normal-cdf'
import { type Mass, sum, difference } from '../quantity'
import { outside } from '../refusal'
import { SPREAD_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

/** What an arrow is to land on, and how much can still come off it. */
export interface Landing {
  readonly target: Mass
  /** Either side of the target. */
  readonly tolerance: Mass
  /** The most the post can give. */
  readonly trimmable: Mass
}

/**
 * The weights before trim from which an arrow can still be brought inside its tolerance: not lighter than the lower edge,
 * and not heavier than the upper edge by more than the post can give.
 */
export const reachable = ({ target, tolerance, trimmable }: Landing) => ({
  from: difference(target, tolerance),
  to: sum(target, tolerance, trimmable),
})

export const landingProblems = ({ target, tolerance, trimmable }: Landing) => [
  ...outside('target', target, WEIGHT_BOUNDS, 'gr'),
  ...outside('tolerance', tolerance, SPREAD_BOUNDS, 'gr'),
  ...outside('what the post can give', trimmable, WEIGHT_BOUNDS, 'gr'),
]

/** The chance that a normal weight lies in a range. Plain kilograms; a standard deviation of 0 is a certain weight. */
export function chanceBetween(from: number, to: number, mean: number, sd: number): number {
  if (sd === 0) return mean >= from && mean <= to ? 1 : 0
  // From whichever side is the thinner tail, so that small chances keep their digits.
  return mean > (from + to) / 2
    ? normalCdf((to - mean) / sd) - normalCdf((from - mean) / sd)
    : normalCdf((mean - from) / sd) - normalCdf((mean - to) / sd)
}
