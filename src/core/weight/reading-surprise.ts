import { studentTCdf } from '../numeric/distributions/student-t-cdf'
import { studentTQuantile } from '../numeric/distributions/student-t-quantile'
import { difference, grains, type Mass, magnitude, type Ratio, ratio, scaled, sum } from '../quantity'
import { bounds, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import type { PredictedPart } from './predicted-part'
import { SPREAD_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

/** Rarer than one in a thousand is worth a question. */
export const ASK_BELOW = ratio(0.001)
/** A lot without any spread surprises at everything. */
export const SURPRISE_SD_BOUNDS = bounds(grains(1e-6), SPREAD_BOUNDS.max)

/**
 * How seldom a lot would give a reading as far off as this one, judged by the lot's other readings.
 *
 * @param reading of one piece, not among those the prediction was made from
 * @returns the chance of being at least so far off; below {@link ASK_BELOW} the finding `surprising-reading` comes with it
 *
 * Source: the predictive distribution of predicted-part; the threshold is common practice, no source [CP].
 */
export function readingSurprise(reading: Mass, predicted: PredictedPart): Outcome<Ratio> {
  const { estimate, degrees = Infinity } = predicted
  const refused = refusal([
    ...outside('reading', reading, WEIGHT_BOUNDS, 'gr'),
    ...outside('expected weight', estimate.value, WEIGHT_BOUNDS, 'gr'),
    ...outside('standard deviation', estimate.sd, SURPRISE_SD_BOUNDS, 'gr'),
  ])
  if (refused) return refused
  const t = magnitude(difference(reading, estimate.value)) / estimate.sd
  const chance = ratio(2 * studentTCdf(-t, degrees))
  const reach = scaled(estimate.sd, studentTQuantile(1 - ASK_BELOW / 2, degrees))
  return known(
    chance,
    {
      equation: 'P(|T| ≥ |reading − expected|/s)',
      inputs: [
        term('reading', reading, 'gr', 'read'),
        term('expected weight', estimate.value, 'gr'),
        term('standard deviation', estimate.sd, 'gr'),
      ],
      result: [term('chance', chance, '%')],
      source: ['BDA3', 'GUM'],
    },
    chance < ASK_BELOW
      ? [
          {
            code: 'surprising-reading',
            reading,
            expected: estimate.value,
            low: difference(estimate.value, reach),
            high: sum(estimate.value, reach),
          },
        ]
      : [],
  )
}
