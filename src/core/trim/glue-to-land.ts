import { normalCdf } from '../numeric/distributions/normal-cdf'
import { difference, grains, greatest, least, type Mass, type Ratio, ratio, scaled, sum } from '../quantity'
import { bounds, type Estimate, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { SPREAD_BOUNDS, WEIGHT_BOUNDS } from '../weight/weight-bounds'
import { POST_BOUNDS } from './post-problems'

export interface JointState {
  /** Glue that would bring the arrow onto its target: target less dry weight. Negative when it is heavy without any. */
  readonly needed: Mass
  /** Glue that is on it by the scale, wiped; undefined while it was not weighed wet. */
  readonly on: Mass | undefined
  /** What this shop's joints take, all that are open together. */
  readonly usual: Pick<Estimate<Mass>, 'value' | 'sd'>
  /** Either side of the target. */
  readonly tolerance: Mass
}

export interface GlueAdvice {
  /**
   * `spread` the joint and weigh it wet; `wipe` or `add` a touch and weigh again; `done` on the number; `question` when no
   * joint as this shop makes them brings it there.
   */
  readonly next: 'spread' | 'wipe' | 'add' | 'done' | 'question'
  /** Glue to end up with: what is needed, held to what the shop's joints take. */
  readonly aim: Mass
  /** The 95 % band of the shop's joints: less starves the bond, more is a blob. */
  readonly least: Mass
  readonly most: Mass
  /** Over the target as it stands, with the usual glue while none was weighed; below 0 it is light. */
  readonly over: Mass
  /** Chance that the arrow is inside its tolerance when the joint is left to its usual scatter. */
  readonly chanceUnweighed: Ratio
}

/** One touch with the cloth's corner or the syringe: assumed, no source. Half of it is near enough. */
const GLUE_TOUCH = grains(0.2)
const JOINT_SPREAD_BOUNDS = bounds(grains(0.001), SPREAD_BOUNDS.max)
const Z95 = 1.959_964 // normal quantile of 0.975

/**
 * How the last scatter of the build, the front glue, is brought onto the number while it is still open. Epoxy loses
 * nothing as it cures, so that the wiped arrow weighs wet what it will weigh finished.
 *
 *   needed = target − dry;  aim = needed, held inside usual ± 1.96·s;  over = on − needed
 *   P(lands unweighed) = Φ((needed + tolerance − usual)/s) − Φ((needed − tolerance − usual)/s)
 *
 * @returns the advice, or `outside-model`
 *
 * Source: derived here; weighing wet, wiping and adding within what a joint takes are common practice, no source [CP].
 */
export function glueToLand({ needed, on, usual, tolerance }: JointState): Outcome<GlueAdvice> {
  const refused = refusal([
    ...outside('glue needed', needed, POST_BOUNDS.weight, 'gr'),
    ...(on === undefined ? [] : outside('glue on the joint', on, POST_BOUNDS.weight, 'gr')),
    ...outside('usual glue', usual.value, WEIGHT_BOUNDS, 'gr'),
    ...outside('spread of the usual glue', usual.sd, JOINT_SPREAD_BOUNDS, 'gr'),
    ...outside('tolerance', tolerance, SPREAD_BOUNDS, 'gr'),
  ])
  if (refused) return refused
  const reach = scaled(usual.sd, Z95)
  const fewest = greatest(grains(0), difference(usual.value, reach))
  const most = sum(usual.value, reach)
  const aim = least(most, greatest(fewest, needed))
  const over = difference(on ?? usual.value, needed)
  const below = (glue: number) => normalCdf((glue - usual.value) / usual.sd)
  const chanceUnweighed = ratio(below(needed + tolerance) - below(needed - tolerance))
  return known(
    {
      next: nextTouch(difference(aim, needed), on, aim, over, tolerance),
      aim,
      least: fewest,
      most,
      over,
      chanceUnweighed,
    },
    {
      equation: 'needed = target − dry; aim = needed within usual ± 1.96·s; over = on − needed',
      inputs: [
        term('glue needed', needed, 'gr'),
        ...(on === undefined ? [] : [term('glue on the joint', on, 'gr', 'read')]),
        term('usual glue', usual.value, 'gr'),
        term('spread of the usual glue', usual.sd, 'gr'),
        term('tolerance', tolerance, 'gr'),
      ],
      result: [
        term('glue to end up with', aim, 'gr'),
        term('over the target', over, 'gr'),
        term('chance to land unweighed', chanceUnweighed, '%'),
      ],
      source: ['CP', 'OWN'],
    },
  )
}

/** @param beyond what even the best joint leaves over the target */
function nextTouch(beyond: Mass, on: Mass | undefined, aim: Mass, over: Mass, tolerance: Mass): GlueAdvice['next'] {
  if (Math.abs(beyond) > tolerance) return 'question'
  if (on === undefined) return 'spread'
  const change = difference(aim, on)
  if (Math.abs(change) <= GLUE_TOUCH / 2 && Math.abs(over) <= tolerance) return 'done'
  return change < 0 ? 'wipe' : 'add'
}
