import { kilograms, type Density, type Length, type Mass, millimetres } from '../quantity'
import { bounds, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { POST_BOUNDS } from './post-problems'

export const BORE_BOUNDS = bounds(millimetres(2), millimetres(40))
export const GAP_BOUNDS = bounds(millimetres(0), millimetres(1))

/**
 * Glue that fills the gap between a post and its bore. Small beside fillet and fill, which make up most of what is weighed.
 *
 *   π·(D − g)·g·l·ρ
 *
 * @param bore D of the shaft
 * @param bond l, the length that is glued
 * @param gap g between post and bore, on the radius
 * @returns the weight, or `outside-model`
 *
 * Source: [PAPPUS].
 */
export function gapGlue(bore: Length, bond: Length, gap: Length, density: Density): Outcome<Mass> {
  const refused = refusal([
    ...outside('bore of the shaft', bore, BORE_BOUNDS, 'mm'),
    ...outside('bond length', bond, POST_BOUNDS.length, 'mm'),
    ...outside('gap', gap, GAP_BOUNDS, 'mm'),
    ...outside('density of the glue', density, POST_BOUNDS.density, 'g/cm³'),
  ])
  if (refused) return refused
  const weight = kilograms(Math.PI * (bore - gap) * gap * bond * density)
  return known(weight, {
    equation: 'π·(D − g)·g·l·ρ',
    inputs: [
      term('bore of the shaft', bore, 'mm'),
      term('bond length', bond, 'mm'),
      term('gap', gap, 'mm'),
      term('density of the glue', density, 'g/cm³'),
    ],
    result: [term('glue in the gap', weight, 'gr')],
    source: ['PAPPUS'],
  })
}
