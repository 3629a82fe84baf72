import { type Outcome, bounds, known, term } from '../outcome'
import { type Length, type Ratio, metres, millimetres, ratio } from '../quantity'
import { outside, refusal } from '../refusal'
import { FLIGHT_BOUNDS } from './flight-bounds'

/** Fins as a trapezium: vanes behind, or the blades of a head. Two are counted as spinning, half of the time edge on. */
export interface FinSet {
  readonly count: 2 | 3 | 4
  /** How far one stands out from the shaft. */
  readonly span: Length
  readonly rootChord: Length
  readonly tipChord: Length
  /** How far the front corner at the tip lies behind the one at the root. */
  readonly sweep: Length
  /** Where the front of the root stands, ahead of the throat. */
  readonly rootFront: Length
}

/** A share of the normal force: its coefficient per radian, on the shaft's section, and where it acts. */
export interface Lift {
  readonly slope: Ratio
  /** Ahead of the throat; behind it is negative. */
  readonly centre: Length
}

export const FIN_BOUNDS = Object.freeze({
  count: bounds(ratio(2), ratio(4)),
  span: bounds(millimetres(0.1), millimetres(100)),
  rootChord: bounds(millimetres(1), millimetres(300)),
  tipChord: bounds(millimetres(0), millimetres(300)),
  sweep: bounds(millimetres(-300), millimetres(300)),
  position: bounds(metres(-1), metres(2)),
})

export const finProblems = (what: string, fins: FinSet) => [
  ...outside(`number of ${what}`, ratio(fins.count), FIN_BOUNDS.count, '1'),
  ...outside(`height of the ${what}`, fins.span, FIN_BOUNDS.span, 'mm'),
  ...outside(`root length of the ${what}`, fins.rootChord, FIN_BOUNDS.rootChord, 'mm'),
  ...outside(`tip length of the ${what}`, fins.tipChord, FIN_BOUNDS.tipChord, 'mm'),
  ...outside(`sweep of the ${what}`, fins.sweep, FIN_BOUNDS.sweep, 'mm'),
  ...outside(`front of the ${what}`, fins.rootFront, FIN_BOUNDS.position, 'in'),
]

/**
 * Lift of a fin set on a round body.
 *
 *   C_Nα = K·4N(s/d)²/(1 + √(1 + (2l/(c_r + c_t))²)),   K = 1 + r/(s + r)
 *   centre behind the root's front: (x_r/3)·(c_r + 2c_t)/(c_r + c_t) + (c_r + c_t − c_r·c_t/(c_r + c_t))/6
 *
 * with l the length of the mid-chord line. Stiff thin fins at small angles; soft vanes and hooked ones do less.
 *
 * @returns the lift, or `outside-model` where an input is not within {@link FIN_BOUNDS}
 *
 * Source: [BARROWMAN], published for three and four fins; two are the same rule at N = 2, the mean over a turn.
 */
export function finLift(fins: FinSet, diameter: Length): Outcome<Lift> {
  const refused = refusal([
    ...finProblems('fins', fins),
    ...outside('shaft diameter', diameter, FLIGHT_BOUNDS.diameter, 'mm'),
  ])
  if (refused) return refused
  const lift = liftOf(fins, diameter)
  return known(lift, {
    equation: 'C_Nα = (1 + r/(s + r))·4·N·(s/d)² / (1 + √(1 + (2·l/(c_r + c_t))²))',
    inputs: [
      term('number of fins', ratio(fins.count), '1'),
      term('height of the fins', fins.span, 'mm'),
      term('root length of the fins', fins.rootChord, 'mm'),
      term('tip length of the fins', fins.tipChord, 'mm'),
      term('sweep of the fins', fins.sweep, 'mm'),
      term('front of the fins', fins.rootFront, 'in'),
      term('shaft diameter', diameter, 'mm'),
    ],
    result: [term('lift per radian', lift.slope, '1'), term('centre of the lift', lift.centre, 'in')],
    source: ['BARROWMAN'],
  })
}

/** The same without the checks, for models that have made them. */
export function liftOf(fins: FinSet, diameter: Length): Lift {
  const { count, span, rootChord, tipChord, sweep, rootFront } = fins
  const chords = rootChord + tipChord // m
  const midChord = Math.hypot(span, sweep + (tipChord - rootChord) / 2) // m
  const body = 1 + diameter / 2 / (span + diameter / 2)
  const slope = (body * 4 * count * (span / diameter) ** 2) / (1 + Math.hypot(1, (2 * midChord) / chords))
  const behind = ((sweep / 3) * (chords + tipChord)) / chords + (chords - (rootChord * tipChord) / chords) / 6
  return { slope: ratio(slope), centre: metres(rootFront - behind) }
}
