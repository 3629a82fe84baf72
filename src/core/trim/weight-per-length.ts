import { kilogramsPerMetre, type LinearDensity, millimetres } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { refusal } from '../refusal'
import type { PostSection } from './post'
import { postProblems } from './post-problems'

/** ρ·π(D² − d²)/4, kg/m. For sections already found to be sound. */
export const linearDensityOf = ({ outerDiameter, bore, density }: PostSection): number =>
  (density * Math.PI * (outerDiameter ** 2 - bore ** 2)) / 4

/**
 * What a millimetre of a post weighs.
 *
 *   ρ·π(D² − bore²)/4
 *
 * @returns the weight per length, or what is wrong with the section
 *
 * Source: volume of a ring; densities in materials.
 */
export function weightPerLength(section: PostSection): Outcome<LinearDensity> {
  const refused = refusal(postProblems({ sections: [section], leastBond: millimetres(0) }))
  if (refused) return refused
  const value = kilogramsPerMetre(linearDensityOf(section))
  return known(value, {
    equation: 'ρ·π·(D² − bore²)/4',
    inputs: [
      term('density', section.density, 'g/cm³'),
      term('outer diameter', section.outerDiameter, 'mm'),
      term('bore', section.bore, 'mm'),
    ],
    result: [term('weight per length', value, 'gr/mm')],
    source: ['MATERIALS'],
  })
}
