import { greatest, inQuadrature, inUnit, type Mass, scaled, type Time } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { SINCE_CHECK_BOUNDS, SPREAD_BOUNDS, STEP_BOUNDS } from './weight-bounds'

export interface Scale {
  /** The smallest step of the display. */
  readonly step: Mass
  /** Standard deviation of repeated readings of one thing, rounding included; 0 where it was never tried. */
  readonly repeatability: Mass
  /** Standard uncertainty of its calibration: wrong the same way at every reading. */
  readonly calibration: Mass
  /** Standard deviation of its drift in an hour since it was last checked. */
  readonly driftPerHour: Mass
}

export interface ReadingError {
  /** Each reading's own: independent, adds in quadrature. */
  readonly own: Mass
  /** Common to every reading of this scale: adds linearly over the parts of an arrow. */
  readonly shared: Mass
}

/**
 * How wrong one reading of a scale may be, in two parts that add up differently.
 *
 *   own = √(readings)·max(repeatability, d/√12);  shared = √(calibration² + (drift·hours)²)
 *
 * @param sinceCheck how long ago the scale was last checked
 * @param tared the weight is a difference of two readings
 * @returns both standard uncertainties, or `outside-model`
 *
 * Source: [GUM] F.2.2.1 and 5.2 (correlated inputs); drift growing with time is common practice, no source [CP].
 */
export function scaleError(scale: Scale, sinceCheck: Time, tared = false): Outcome<ReadingError> {
  const { step, repeatability, calibration, driftPerHour } = scale
  const refused = refusal([
    ...outside('display step', step, STEP_BOUNDS, 'gr'),
    ...outside('repeatability', repeatability, SPREAD_BOUNDS, 'gr'),
    ...outside('calibration', calibration, SPREAD_BOUNDS, 'gr'),
    ...outside('drift per hour', driftPerHour, SPREAD_BOUNDS, 'gr'),
    ...outside('time since check', sinceCheck, SINCE_CHECK_BOUNDS, 'h'),
  ])
  if (refused) return refused
  const one = greatest(repeatability, scaled(step, 1 / Math.sqrt(12)))
  const own = scaled(one, Math.sqrt(tared ? 2 : 1))
  const shared = inQuadrature(calibration, scaled(driftPerHour, inUnit(sinceCheck, 'h')))
  return known(
    { own, shared },
    {
      equation:
        'own = √k·max(repeatability, d/√12), k = 2 for a tared difference; shared = √(calibration² + (drift·t)²)',
      inputs: [
        term('display step', step, 'gr'),
        term('repeatability', repeatability, 'gr'),
        term('calibration', calibration, 'gr'),
        term('drift per hour', driftPerHour, 'gr'),
        term('time since check', sinceCheck, 'h'),
      ],
      result: [term('own', own, 'gr'), term('shared', shared, 'gr')],
      source: ['GUM', 'CP'],
    },
  )
}
