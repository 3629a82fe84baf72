import { difference, type Mass, sum } from '../quantity'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { WEIGHT_BOUNDS } from './weight-bounds'

/**
 * Glue of a joint, from the weight of the whole less the weights of all that went into it: fletched less cut shaft, vanes
 * and wrap; finished less dry.
 *
 * @param whole weighed with the glue
 * @param parts weighed without it
 * @returns the glue's weight, `lighter-than-its-parts` when the whole weighs less, or `outside-model`
 *
 * Source: difference of weighings. Error: √(1 + number of parts) readings' worth.
 */
export function glueByDifference(whole: Mass, parts: readonly Mass[]): Outcome<Mass> {
  const refused = refusal([
    ...outside('weight of the whole', whole, WEIGHT_BOUNDS, 'gr'),
    ...parts.flatMap((part) => outside('weight of a part', part, WEIGHT_BOUNDS, 'gr')),
  ])
  if (refused) return refused
  const dry = sum(...parts)
  if (whole < dry) return noAnswer({ code: 'lighter-than-its-parts', whole, parts: dry })
  const glue = difference(whole, dry)
  return known(glue, {
    equation: 'glue = whole − Σ parts',
    inputs: [
      term('weight of the whole', whole, 'gr', 'read'),
      ...parts.map((part, i) => term(`part ${i + 1}`, part, 'gr', 'read')),
    ],
    result: [term('glue', glue, 'gr')],
    source: ['OWN'],
  })
}
