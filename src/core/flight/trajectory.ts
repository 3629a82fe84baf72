import type { Finding } from '../finding'
import { integrated } from '../numeric/adaptive-ode'
import { type Outcome, known, noAnswer, term } from '../outcome'
import {
  type Angle,
  type Length,
  STANDARD_GRAVITY_SI,
  type Speed,
  type Time,
  type Wavenumber,
  degrees,
  metres,
  metresPerSecond,
  radians,
  seconds,
} from '../quantity'
import { outside, refusal } from '../refusal'
import { MOST_DECAY } from './flat-fire'
import { FLIGHT_BOUNDS } from './flight-bounds'

const TOLERANCE = 1e-11

/** The arrow at one range, measured level from the launch. */
export interface TrajectoryPoint {
  readonly range: Length
  readonly speed: Speed
  /** Straight down from the line it was launched along. */
  readonly drop: Length
  /** Above the launch; below it is negative. */
  readonly height: Length
  readonly time: Time
  /** Of the path above the level. */
  readonly angle: Angle
}

/**
 * The path of an arrow under gravity and drag by the square of its speed, at the ranges asked for.
 *
 *   x'' = −k·v·x',   y'' = −k·v·y' − g,   v² = x'² + y'²
 *
 * Integrated over level distance rather than time, so that each range is met exactly.
 *
 * @param decay k, as {@link dragDecay} gives it; 0 in vacuum
 * @param ranges in any order; the points come in the same order
 * @returns a point for each range that is reached, with `range-beyond-flight` for each that is not; none where none is;
 * or `no-ranges`, or `outside-model`
 *
 * Source: [MECHANICS], integrated by [DP80] to eleven digits a step.
 */
export function trajectory(
  launch: Speed,
  decay: Wavenumber,
  ranges: readonly Length[],
  angle: Angle = degrees(0),
): Outcome<readonly TrajectoryPoint[]> {
  const refused = refusal([
    ...outside('launch speed', launch, FLIGHT_BOUNDS.speed, 'ft/s'),
    ...outside('loss of speed with distance', decay, FLIGHT_BOUNDS.decay, '1/m'),
    ...outside('launch angle', angle, FLIGHT_BOUNDS.angle, '°'),
    ...rangeProblems(ranges),
  ])
  if (refused) return refused
  const flown = flownTo(launch, decay, ranges, angle)
  const points = flown.filter((point) => point !== undefined)
  const beyond: readonly Finding[] = ranges
    .filter((_, i) => flown[i] === undefined)
    .map((range) => ({ code: 'range-beyond-flight', range }))
  const [first, ...rest] = beyond
  if (first && points.length === 0) return noAnswer(first, ...rest)
  return known(
    points,
    {
      equation: "x'' = −k·v·x',  y'' = −k·v·y' − g, step by step",
      inputs: [
        term('launch speed', launch, 'ft/s'),
        term('launch angle', angle, '°'),
        term('loss of speed with distance', decay, '1/m'),
        ...ranges.map((range, i) => term(`range ${i + 1}`, range, 'yd')),
      ],
      result: points.flatMap((point) => [
        term('range', point.range, 'yd'),
        term('retained speed', point.speed, 'ft/s'),
        term('drop', point.drop, 'in'),
        term('time of flight', point.time, 's'),
      ]),
      source: ['MECHANICS', 'DP80'],
    },
    beyond,
  )
}

export const rangeProblems = (ranges: readonly Length[]): readonly Finding[] =>
  ranges.length === 0
    ? [{ code: 'no-ranges' }]
    : ranges.flatMap((range, i) => outside(`range ${i + 1}`, range, FLIGHT_BOUNDS.range, 'yd'))

/** The points themselves, nothing for a range that is not reached. Takes any numbers within or near the bounds. */
export function flownTo(
  launch: number,
  decay: number,
  ranges: readonly Length[],
  angle: number,
): readonly (TrajectoryPoint | undefined)[] {
  // Over level distance x the state is [x', y', y, t] in m/s, m/s, m, s: d/dx = (d/dt)/x'.
  const slope = (_: number, state: Float64Array, into: Float64Array) => {
    const vx = state[0]!
    const vy = state[1]!
    const drag = decay * Math.sqrt(vx * vx + vy * vy)
    into[0] = -drag
    into[1] = -(drag * vy + STANDARD_GRAVITY_SI) / vx
    into[2] = vy / vx
    into[3] = 1 / vx
  }
  const stops = [...new Set<number>(ranges)].sort((a, b) => a - b).filter((range) => decay * range <= MOST_DECAY)
  const states = integrated(slope, 0, [launch * Math.cos(angle), launch * Math.sin(angle), 0, 0], stops, TOLERANCE)
  const byRange = new Map(states.map((state, i) => [stops[i], state]))
  return ranges.map((range) => {
    const state = byRange.get(range)
    if (state === undefined) return undefined
    const [vx, vy, height, time] = [state[0]!, state[1]!, state[2]!, state[3]!]
    return {
      range,
      speed: metresPerSecond(Math.hypot(vx, vy)),
      drop: metres(range * Math.tan(angle) - height),
      height: metres(height),
      time: seconds(time),
      angle: radians(Math.atan2(vy, vx)),
    }
  })
}
