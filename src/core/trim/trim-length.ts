import { type Length, type Mass, metres } from '../quantity'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import type { Post } from './post'
import { postAvailable } from './post-available'
import { POST_BOUNDS, postProblems } from './post-problems'
import { linearDensityOf } from './weight-per-length'

export interface TrimLength {
  /** To take off the rear of the post. */
  readonly length: Length
  /** Bond that is left. */
  readonly bondLeft: Length
  /** Straight post and stacked weights that are left behind the shoulder. */
  readonly postLeft: Length
}

/**
 * How much length comes off a post for a weight, section by section from the rear.
 *
 *   length = weight/(ρ·π(D² − bore²)/4)
 *
 * @returns the length and what it leaves; `trim-into-bond` when the weight is not there without eating into the bond that
 *   must stay or into the shoulder; what is wrong with the post
 *
 * Source: volume of a ring; densities in materials.
 */
export function trimLength(weight: Mass, post: Post): Outcome<TrimLength> {
  const refused = refusal([...outside('weight to trim', weight, POST_BOUNDS.trim, 'gr'), ...postProblems(post)])
  if (refused) return refused
  const available = postAvailable(post)
  if (weight > available.weight) {
    return noAnswer({
      code: 'trim-into-bond',
      wanted: weight,
      available: available.weight,
      leastBond: post.leastBond,
    })
  }
  let left: number = weight // kg
  let length = 0 // m
  let bondLeft = 0
  let postLeft = 0
  for (const section of post.sections) {
    const perMetre = linearDensityOf(section)
    const take = Math.min(section.length, left / perMetre)
    left = Math.max(0, left - take * perMetre)
    length += take
    postLeft += section.length - take
    if (section.bonded) bondLeft += section.length - take
  }
  const value = { length: metres(length), bondLeft: metres(bondLeft), postLeft: metres(postLeft) }
  return known(value, {
    equation: 'length = weight/(ρ·π·(D² − bore²)/4)',
    inputs: [
      term('weight to trim', weight, 'gr'),
      ...post.sections.flatMap(({ name, length: long, outerDiameter, bore, density }) => [
        term(`length of ${name}`, long, 'mm'),
        term(`outer diameter of ${name}`, outerDiameter, 'mm'),
        term(`bore of ${name}`, bore, 'mm'),
        term(`density of ${name}`, density, 'g/cm³'),
      ]),
    ],
    result: [term('length to trim', value.length, 'mm'), term('bond left', value.bondLeft, 'mm')],
    source: ['MATERIALS'],
  })
}
