import type { Finding } from '../finding'
import { type Bounds, type Outcome, bounds, known, term } from '../outcome'
import {
  type Angle,
  type Length,
  type Ratio,
  degrees,
  difference,
  inches,
  metres,
  millimetres,
  ratio,
} from '../quantity'
import { outside, refusal } from '../refusal'
import { type FinSet, finProblems, liftOf } from './fin-lift'
import { FLIGHT_BOUNDS } from './flight-bounds'

/** What stands in front: its cone, and its blades when it has any. */
export interface HeadShape {
  /** Of the cone, from its base to the tip. */
  readonly coneLength: Length
  readonly blades?: FinSet
}

export interface Steered {
  /** Throat to the very tip of the head. */
  readonly overall: Length
  readonly diameter: Length
  /** Balance point, ahead of the throat. */
  readonly balance: Length
  readonly vanes: FinSet
  readonly head: HeadShape
}

export interface SteeringPoint {
  /** Between the arrow and its path. */
  readonly angle: Angle
  /** Centre of pressure, ahead of the throat. */
  readonly centre: Length
  /** How far the balance point lies ahead of the centre of pressure; negative where the arrow would turn over. */
  readonly margin: Length
}

export interface Steering {
  readonly points: readonly SteeringPoint[]
  readonly centre: Bounds<Length>
  readonly least: SteeringPoint
  /** The least margin over the overall length. */
  readonly leastShare: Ratio
}

/** A nocked arrow leaves within a few degrees of its path; at larger angles the shaft's own lift takes over. */
export const STEERING_ANGLES: readonly Angle[] = Object.freeze([1, 2, 3, 4, 5].map(degrees))
/** Least margin wanted, of the overall length: the shop's to set; assumed here, no source [CP]. */
export const WANTED_MARGIN = ratio(0.1)
const CROSS_FLOW = 1.1 // [GALEJS], from memory

const STEERING_BOUNDS = Object.freeze({
  overall: bounds(inches(10), inches(60)),
  balance: bounds(inches(0), inches(60)),
  coneLength: bounds(millimetres(0), millimetres(150)),
})

/**
 * Where the air takes hold of an arrow that flies a little askew, against where it balances: whether the vanes can steer
 * the head. Vanes, blades and cone lift in proportion to the angle; the shaft's cross-flow lift grows with its square and
 * stands at its middle, so the centre of pressure moves forward as the arrow is more askew. A range, never one number.
 *
 *   C_N(α) = ΣC_Nα·α + 1.1·(A_plan/A)·sin²α
 *
 * @param wanted least margin as a share of the overall length
 * @returns the centre of pressure over {@link STEERING_ANGLES}; says `head-outsteers-vanes` or `steering-margin-thin`
 * beside it; or `outside-model`
 *
 * Source: [BARROWMAN] for vanes, blades and cone, [GALEJS] for the shaft. Vanes are taken as stiff and blades as thin
 * plates; groups of broadheads against field points decide.
 */
export function steering(arrow: Steered, wanted: Ratio = WANTED_MARGIN): Outcome<Steering> {
  const { overall, diameter, balance, vanes, head } = arrow
  const refused = refusal([
    ...outside('overall length', overall, STEERING_BOUNDS.overall, 'in'),
    ...outside('shaft diameter', diameter, FLIGHT_BOUNDS.diameter, 'mm'),
    ...outside('balance point', balance, STEERING_BOUNDS.balance, 'in'),
    ...outside('length of the head’s cone', head.coneLength, STEERING_BOUNDS.coneLength, 'mm'),
    ...finProblems('vanes', vanes),
    ...(head.blades ? finProblems('blades', head.blades) : []),
    ...outside('margin wanted', wanted, bounds(ratio(0), ratio(1)), '%'),
  ])
  if (refused) return refused
  const body = planOf(overall, diameter, head.coneLength)
  const lifts = [
    liftOf(vanes, diameter),
    ...(head.blades ? [liftOf(head.blades, diameter)] : []),
    { slope: ratio(2), centre: metres(overall - (2 / 3) * head.coneLength) }, // a cone of any length [BARROWMAN]
  ]
  const points = STEERING_ANGLES.map((angle): SteeringPoint => {
    const shaft = CROSS_FLOW * body.share * Math.sin(angle) ** 2
    const force = lifts.reduce((total, { slope }) => total + slope * angle, shaft)
    const moment = lifts.reduce((total, lift) => total + lift.slope * angle * lift.centre, shaft * body.centre)
    const centre = metres(moment / force)
    return { angle, centre, margin: difference(balance, centre) }
  })
  const ordered = points.toSorted((a, b) => a.margin - b.margin)
  const least = ordered[0]!
  const leastShare = ratio(least.margin / overall)
  const steered: Steering = { points, centre: bounds(ordered.at(-1)!.centre, least.centre), least, leastShare }
  return known(
    steered,
    {
      equation: 'C_N(α) = ΣC_Nα·α + 1.1·(A_plan/A)·sin²α,  centre of pressure = Σ(C_N·x)/ΣC_N',
      inputs: [
        term('overall length', overall, 'in'),
        term('shaft diameter', diameter, 'mm'),
        term('balance point', balance, 'in'),
        term('length of the head’s cone', head.coneLength, 'mm'),
        ...lifts.flatMap((lift, i) => [
          term(`lift per radian ${i + 1}`, lift.slope, '1', 'computed'),
          term(`centre of lift ${i + 1}`, lift.centre, 'in', 'computed'),
        ]),
      ],
      result: points.flatMap((point) => [
        term('angle', point.angle, '°'),
        term('centre of pressure', point.centre, 'in'),
        term('steering margin', point.margin, 'in'),
      ]),
      source: ['BARROWMAN', 'GALEJS'],
      note: 'Vanes taken as stiff. Groups of broadheads against field points decide.',
    },
    marginFindings(steered, wanted),
  )
}

function marginFindings({ least, leastShare }: Steering, wanted: Ratio): readonly Finding[] {
  if (least.margin <= 0) return [{ code: 'head-outsteers-vanes', margin: least.margin, angle: least.angle }]
  if (leastShare < wanted) return [{ code: 'steering-margin-thin', margin: least.margin, share: leastShare, wanted }]
  return []
}

/** The side view of shaft and cone: its area over the section's, and its middle in m ahead of the throat. */
function planOf(overall: number, diameter: number, cone: number) {
  const tube = overall - cone
  const areas = [diameter * tube, (diameter * cone) / 2] as const
  const total = areas[0] + areas[1]
  const centre = (areas[0] * (tube / 2) + areas[1] * (tube + cone / 3)) / total
  return { share: total / ((Math.PI * diameter ** 2) / 4), centre }
}
