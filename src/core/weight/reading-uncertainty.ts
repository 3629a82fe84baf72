import type { Mass } from '../quantity'
import { scaled } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { STEP_BOUNDS } from './weight-bounds'

/**
 * Standard uncertainty of one reading off a display with step d, from the rounding alone.
 *
 *   u = d/√12, and for a tared difference of two readings d/√6
 *
 * @param step the smallest step of the display
 * @param tared the weight is a difference of two readings: container and contents, before and after
 * @returns the standard uncertainty, or `outside-model`
 *
 * Source: [GUM] F.2.2.1.
 */
export function readingUncertainty(step: Mass, tared = false): Outcome<Mass> {
  const refused = refusal(outside('display step', step, STEP_BOUNDS, 'gr'))
  if (refused) return refused
  const u = scaled(step, 1 / Math.sqrt(tared ? 6 : 12))
  return known(u, {
    equation: tared ? 'u = d/√6' : 'u = d/√12',
    inputs: [term('display step', step, 'gr')],
    result: [term('standard uncertainty', u, 'gr')],
    source: ['GUM'],
  })
}
