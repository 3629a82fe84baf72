import { kilograms, type Length, type Mass, millimetres, scaled } from '../quantity'
import { bounds, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import type { PostSection } from './post'
import { POST_BOUNDS, postProblems } from './post-problems'

/**
 * What breaking the rear edge of a post takes off: a ring of triangular section, c × 45°.
 *
 *   π·c²·(D/2 − c/3)·ρ
 *
 * @param chamfer c, not more than the wall is thick
 * @param section the one whose rear edge is broken
 * @returns the weight, or `outside-model`
 *
 * Source: [PAPPUS]; breaking the edge, so that a flexing shaft is not cut from inside, is common practice [CP].
 */
export function chamferWeight(chamfer: Length, section: PostSection): Outcome<Mass> {
  const refused = refusal([
    ...postProblems({ sections: [section], leastBond: millimetres(0) }),
    ...outside('chamfer', chamfer, POST_BOUNDS.chamfer, 'mm'),
  ])
  if (refused) return refused
  const { outerDiameter, bore, density } = section
  const wall = scaled(outerDiameter, (1 - bore / outerDiameter) / 2)
  const thick = refusal(outside('chamfer', chamfer, bounds(POST_BOUNDS.chamfer.min, wall), 'mm'))
  if (thick) return thick
  const weight = kilograms(Math.PI * chamfer ** 2 * (outerDiameter / 2 - chamfer / 3) * density)
  return known(weight, {
    equation: 'π·c²·(D/2 − c/3)·ρ',
    inputs: [
      term('chamfer', chamfer, 'mm'),
      term('outer diameter', outerDiameter, 'mm'),
      term('density', density, 'g/cm³'),
    ],
    result: [term('weight of the chamfer', weight, 'gr')],
    source: ['PAPPUS'],
  })
}
