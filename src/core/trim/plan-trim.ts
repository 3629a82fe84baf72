import { difference, grains, type Length, type Mass } from '../quantity'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { chamferWeight } from './chamfer-weight'
import type { Post } from './post'
import { POST_BOUNDS, postProblems } from './post-problems'
import { type TrimLength, trimLength } from './trim-length'

export interface TrimPlan extends TrimLength {
  /** What comes off by length, and what breaking the edge takes at the end. */
  readonly byLength: Mass
  readonly byChamfer: Mass
}

/**
 * How a weight is taken off a post: by length first, and the last of it by breaking the edge, which comes last and counts.
 *
 * @param needed all that must come off, the chamfer's share included
 * @param chamfer still to be broken; 0 when it is done
 * @returns the plan; `light-arrow` when nothing must come off; `chamfer-takes-more` beside a plan of no length;
 *   `trim-into-bond`; what is wrong with the post
 *
 * Source: trim-length and chamfer-weight. The edge is reckoned on the rearmost section.
 */
export function planTrim(needed: Mass, post: Post, chamfer: Length): Outcome<TrimPlan> {
  const refused = refusal([...outside('weight to trim', needed, POST_BOUNDS.weight, 'gr'), ...postProblems(post)])
  if (refused) return refused
  if (needed < 0) return noAnswer({ code: 'light-arrow', by: difference(grains(0), needed) })
  const [rear] = post.sections
  if (rear === undefined) {
    return noAnswer({ code: 'trim-into-bond', wanted: needed, available: grains(0), leastBond: post.leastBond })
  }
  const edge = chamferWeight(chamfer, rear)
  if (!edge.ok) return edge
  const over = edge.value > needed
  const byLength = over ? grains(0) : difference(needed, edge.value)
  const length = trimLength(byLength, post)
  if (!length.ok) return length
  return known(
    { ...length.value, byLength, byChamfer: edge.value },
    {
      equation: 'by length = needed − chamfer',
      inputs: [term('weight to trim', needed, 'gr'), term('weight of the chamfer', edge.value, 'gr', 'computed')],
      result: [term('by length', byLength, 'gr'), term('length to trim', length.value.length, 'mm')],
      source: ['OWN'],
      steps: [edge.derivation, length.derivation],
    },
    over ? [{ code: 'chamfer-takes-more', chamfer: edge.value, wanted: needed }] : [],
  )
}
