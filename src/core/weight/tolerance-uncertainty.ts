import type { Mass } from '../quantity'
import { scaled } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { TOLERANCE_BOUNDS } from './weight-bounds'

/**
 * Standard uncertainty of a catalogue's ±t with nothing else known: every value inside is equally likely.
 *
 *   u = t/√3
 *
 * @returns the standard uncertainty, or `outside-model`
 *
 * Source: [TN1297] 4.6.
 */
export function toleranceUncertainty(tolerance: Mass): Outcome<Mass> {
  const refused = refusal(outside('tolerance', tolerance, TOLERANCE_BOUNDS, 'gr'))
  if (refused) return refused
  const u = scaled(tolerance, 1 / Math.sqrt(3))
  return known(u, {
    equation: 'u = t/√3',
    inputs: [term('tolerance', tolerance, 'gr')],
    result: [term('standard uncertainty', u, 'gr')],
    source: ['TN1297'],
  })
}
