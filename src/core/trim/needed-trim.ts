import { difference, inQuadrature, type Mass, sameDimension, sum } from '../quantity'
import { type Estimate, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { SPREAD_BOUNDS, WEIGHT_BOUNDS } from '../weight/weight-bounds'

type Uncertain = Pick<Estimate<Mass>, 'value' | 'sd'>

const Z95 = 1.959_964 // normal quantile of 0.975

/**
 * What must come off: the dry weight and the glue still to come, less the target. All three with the head or all without.
 *
 *   trim = dry + expected glue − target
 *
 * @param dry weighed without glue, with its reading's uncertainty
 * @param glue expected of the joints still open
 * @returns the trim with its 95 % band; a light arrow gives a negative one and the finding `light-arrow`; `outside-model`
 *
 * Source: definition; band [GUM] 5.1.2.
 */
export function neededTrim(dry: Uncertain, glue: Uncertain, target: Mass): Outcome<Estimate<Mass>> {
  const refused = refusal([
    ...outside('dry weight', dry.value, WEIGHT_BOUNDS, 'gr'),
    ...outside('uncertainty of the dry weight', dry.sd, SPREAD_BOUNDS, 'gr'),
    ...outside('expected glue', glue.value, WEIGHT_BOUNDS, 'gr'),
    ...outside('uncertainty of the glue', glue.sd, SPREAD_BOUNDS, 'gr'),
    ...outside('target', target, WEIGHT_BOUNDS, 'gr'),
  ])
  if (refused) return refused
  const value = difference(sum(dry.value, glue.value), target)
  const sd = inQuadrature(dry.sd, glue.sd)
  const reach = sameDimension(sd, Z95 * sd)
  return known(
    { value, sd, low: difference(value, reach), high: sum(value, reach) },
    {
      equation: 'trim = dry + glue − target',
      inputs: [
        term('dry weight', dry.value, 'gr', 'read'),
        term('expected glue', glue.value, 'gr'),
        term('target', target, 'gr'),
        term('uncertainty of the dry weight', dry.sd, 'gr'),
        term('uncertainty of the glue', glue.sd, 'gr'),
      ],
      result: [term('trim', value, 'gr'), term('standard uncertainty', sd, 'gr')],
      source: ['GUM'],
    },
    value < 0 ? [{ code: 'light-arrow', by: difference(target, sum(dry.value, glue.value)) }] : [],
  )
}
