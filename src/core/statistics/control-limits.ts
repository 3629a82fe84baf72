import type { Outcome } from '../outcome'
import { known, noAnswer, term } from '../outcome'
import type { Dimension, Quantity, UnitOf } from '../quantity'
import { difference, magnitude, sameDimension, scaled, sum } from '../quantity'
import { mean } from './mean'
import { badValue } from './value-bounds'

const D2 = 1.128 // mean range of two normal values in standard deviations; the source's digits, so that its example reproduces
const D4 = 3.267 // upper limit of a range of two, in mean ranges

export interface ControlLimits<D extends Dimension> {
  readonly centre: Quantity<D>
  readonly lower: Quantity<D>
  readonly upper: Quantity<D>
  /** Mean of the steps from each value to the next. */
  readonly meanStep: Quantity<D>
  readonly stepUpper: Quantity<D>
  /** Values beyond the limits, by their place in the list, from 1. */
  readonly beyond: readonly number[]
}

/**
 * Limits of an individuals chart with moving ranges of two: one reading after another, in the order they were taken.
 *
 * @param values at least two, in order of time
 * @param unit the unit people use for them
 * @returns the limits; values beyond them are the finding `beyond-control-limits`, never dropped; `too-few-values`
 *
 * Source: [EHANDBOOK] 6.3.2.2; D4 [EHANDBOOK] 6.3.2.1 (from memory).
 */
export function controlLimits<D extends Dimension>(
  values: readonly Quantity<D>[],
  unit: UnitOf<D>,
): Outcome<ControlLimits<D>> {
  if (values.length < 2) {
    return noAnswer({ code: 'too-few-values', figure: 'control limits', got: values.length, needed: 2 })
  }
  const bad = badValue(values, unit)
  if (bad) return bad
  const steps = values.slice(1).map((value, i) => magnitude(difference(value, values[i]!)))
  const centre = sameDimension(values[0], mean(values))
  const meanStep = sameDimension(values[0], mean(steps))
  const reach = scaled(meanStep, 3 / D2)
  const lower = difference(centre, reach)
  const upper = sum(centre, reach)
  const beyond = values.flatMap((value, i) => (value < lower || value > upper ? [i + 1] : []))
  return known(
    { centre, lower, upper, meanStep, stepUpper: scaled(meanStep, D4), beyond },
    {
      equation: 'limits = mean ± 3·(mean step)/1.128; step limit = 3.267·(mean step)',
      inputs: values.map((value, i) => term(`value ${i + 1}`, value, unit)),
      result: [
        term('mean', centre, unit),
        term('mean step', meanStep, unit),
        term('lower limit', lower, unit),
        term('upper limit', upper, unit),
      ],
      source: ['EHANDBOOK'],
    },
    beyond.length === 0 ? [] : [{ code: 'beyond-control-limits', places: beyond }],
  )
}
