import { grains, inQuadrature, type Mass, magnitude, sameDimension, scaled } from '../quantity'
import { bounds, known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { mean } from '../statistics/mean'
import { standardDeviation } from '../statistics/standard-deviation'
import { SPREAD_BOUNDS, STEP_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

export const CHECK_WEIGHT_BOUNDS = bounds(grains(1), WEIGHT_BOUNDS.max)

export interface ScaleCheck {
  /** How much too heavy the scale shows; take it off a reading. */
  readonly error: Mass
  /** Standard uncertainty of that error: the scale's calibration from now on. */
  readonly calibration: Mass
  /** Scatter of the readings, for want of better the rounding's. */
  readonly repeatability: Mass
}

/**
 * A scale tried with a check weight: how far off it is, and how well that is known.
 *
 *   error = mean reading − check weight;  u = √(s²/n + d²/12 + u_w²)
 *
 * @param readings of the check weight, one or more, each with the pan cleared in between
 * @param checkWeight what it weighs
 * @param checkWeightSd the standard uncertainty of that
 * @param step the display's smallest step
 * @returns the error; more than two standard uncertainties is the finding `scale-off`; `too-few-values`, `outside-model`
 *
 * Source: [GUM] 4.2.3 and F.2.2.1.
 */
export function scaleCheck(
  readings: readonly Mass[],
  checkWeight: Mass,
  checkWeightSd: Mass,
  step: Mass,
): Outcome<ScaleCheck> {
  if (readings.length === 0) return noAnswer({ code: 'too-few-values', figure: 'scale check', got: 0, needed: 1 })
  const refused = refusal([
    ...readings.flatMap((reading) => outside('reading', reading, WEIGHT_BOUNDS, 'gr')),
    ...outside('check weight', checkWeight, CHECK_WEIGHT_BOUNDS, 'gr'),
    ...outside('uncertainty of the check weight', checkWeightSd, SPREAD_BOUNDS, 'gr'),
    ...outside('display step', step, STEP_BOUNDS, 'gr'),
  ])
  if (refused) return refused
  const rounding = scaled(step, 1 / Math.sqrt(12))
  const scatter = readings.length < 2 ? 0 : standardDeviation(readings)
  const error = sameDimension(step, mean(readings.map((reading) => reading - checkWeight)))
  const calibration = inQuadrature(sameDimension(step, scatter / Math.sqrt(readings.length)), rounding, checkWeightSd)
  const repeatability = sameDimension(step, Math.max(scatter, rounding))
  return known(
    { error, calibration, repeatability },
    {
      equation: 'error = mean − check weight; u = √(s²/n + d²/12 + u_w²)',
      inputs: [
        ...readings.map((reading, i) => term(`reading ${i + 1}`, reading, 'gr')),
        term('check weight', checkWeight, 'gr'),
        term('uncertainty of the check weight', checkWeightSd, 'gr'),
        term('display step', step, 'gr'),
      ],
      result: [term('error', error, 'gr'), term('standard uncertainty', calibration, 'gr')],
      source: ['GUM'],
    },
    magnitude(error) > 2 * calibration ? [{ code: 'scale-off', by: error, checkWeight }] : [],
  )
}
