import { type Ratio, ratio } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { refusal } from '../refusal'
import type { Forecast } from './forecast-weight'
import { forecastProblems } from './forecast-problems'
import { chanceBetween, type Landing, landingProblems, reachable } from './landing'

/**
 * The chance that one arrow can be brought to its target.
 *
 *   P(target − tolerance ≤ weight before trim ≤ target + tolerance + what the post can give)
 *
 * @param forecast of the weight before trim, glue still to come included
 * @returns the chance, or `outside-model`
 *
 * Source: definition, with the weight taken as normal.
 */
export function chanceToReach(forecast: Forecast, landing: Landing): Outcome<Ratio> {
  const refused = refusal([...forecastProblems(forecast), ...landingProblems(landing)])
  if (refused) return refused
  const { from, to } = reachable(landing)
  const { value, sd } = forecast.total
  const chance = ratio(chanceBetween(from, to, value, sd))
  return known(chance, {
    equation: 'chance = Φ((target + tolerance + trimmable − weight)/u) − Φ((target − tolerance − weight)/u)',
    inputs: [
      term('weight before trim', value, 'gr', 'computed'),
      term('standard uncertainty', sd, 'gr', 'computed'),
      term('target', landing.target, 'gr'),
      term('tolerance', landing.tolerance, 'gr'),
      term('trimmable', landing.trimmable, 'gr'),
    ],
    result: [term('chance', chance, '%')],
    source: ['OWN'],
  })
}
