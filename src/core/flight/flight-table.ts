import type { Finding } from '../finding'
import { positiveBand, symmetricBand } from '../numeric/band'
import { type Estimate, type Outcome, bounds, known, noAnswer, term } from '../outcome'
import {
  type Density,
  type Energy,
  type Length,
  type Mass,
  type Momentum,
  type Ratio,
  type Speed,
  type Time,
  feetPerSecond,
  joules,
  kilogramMetresPerSecond,
  metres,
  metresPerSecond,
  ratio,
  seconds,
} from '../quantity'
import { outside, refusal } from '../refusal'
import { DRAG_BAND } from './drag-band'
import { decayOf, slowedProblems } from './drag-decay'
import { FLIGHT_BOUNDS } from './flight-bounds'
import { type TrajectoryPoint, flownTo, rangeProblems } from './trajectory'

/** An arrow and the air it flies through. */
export interface Flown {
  readonly mass: Mass
  readonly diameter: Length
  readonly speed: Estimate<Speed>
  readonly density: Density
  /** {@link DRAG_BAND} where nothing is said. */
  readonly drag?: Estimate<Ratio>
}

export interface FlightRow {
  readonly range: Length
  readonly speed: Estimate<Speed>
  readonly energy: Estimate<Energy>
  readonly momentum: Estimate<Momentum>
  /** Below the level line of launch. */
  readonly drop: Estimate<Length>
  readonly time: Estimate<Time>
  readonly energyKept: Ratio
}

/** Share of one standard error by which an input is moved to see what it does. */
const NUDGE = 0.01

/**
 * What an arrow launched level still has at each range, with the errors of launch speed and drag carried to it.
 *
 * @returns a row for each range that is reached, with `range-beyond-flight` for each that is not; none where none is; or
 * `no-ranges`, or `outside-model`
 *
 * Source: the path of {@link trajectory}; the errors by [GUM] 5.1.2.
 */
export function flightTable(arrow: Flown, ranges: readonly Length[]): Outcome<readonly FlightRow[]> {
  const { mass, diameter, speed, density, drag = DRAG_BAND } = arrow
  const refused = refusal([
    ...slowedProblems({ mass, diameter, density, drag: drag.value }),
    ...outside('launch speed', speed.value, FLIGHT_BOUNDS.speed, 'ft/s'),
    ...outside('error of the launch speed', speed.sd, bounds(feetPerSecond(0), speed.value), 'ft/s'),
    ...outside('error of the drag coefficient', drag.sd, bounds(ratio(0), drag.value), '1'),
    ...rangeProblems(ranges),
  ])
  if (refused) return refused
  const fly = (faster: number, rougher: number) =>
    flownTo(speed.value + faster, decayOf(mass, diameter, density, drag.value + rougher), ranges, 0)
  const flown = fly(0, 0)
  const faster = fly(NUDGE * speed.sd, 0)
  const rougher = fly(0, NUDGE * drag.sd)
  const rows = ranges.flatMap((range, i) => {
    const [point, quick, rough] = [flown[i], faster[i], rougher[i]]
    return point && quick && rough ? [rowOf(range, mass, speed.value, point, quick, rough)] : []
  })
  const reached = new Set(rows.map(({ range }) => range))
  const beyond: readonly Finding[] = ranges
    .filter((range) => !reached.has(range))
    .map((range) => ({ code: 'range-beyond-flight', range }))
  const [first, ...rest] = beyond
  if (first && rows.length === 0) return noAnswer(first, ...rest)
  return known(
    rows,
    {
      equation: "x'' = −k·v·x',  y'' = −k·v·y' − g,  k = ρ·C_d·(π·d²/4)/(2·m),  E = ½·m·v²,  p = m·v",
      inputs: [
        term('arrow weight', mass, 'gr'),
        term('shaft diameter', diameter, 'mm'),
        term('launch speed', speed.value, 'ft/s'),
        term('standard error of the launch speed', speed.sd, 'ft/s'),
        term('air density', density, 'kg/m³'),
        term('drag coefficient', drag.value, '1'),
        term('standard error of the drag coefficient', drag.sd, '1'),
      ],
      result: rows.flatMap((row) => [
        term('range', row.range, 'yd'),
        term('retained speed', row.speed.value, 'ft/s'),
        term('kinetic energy', row.energy.value, 'ft·lbf'),
        term('momentum', row.momentum.value, 'slug·ft/s'),
        term('drop', row.drop.value, 'in'),
        term('time of flight', row.time.value, 's'),
      ]),
      source: ['MECHANICS', 'DP80', 'MIYAZAKI20', 'ORTIZ20', 'GUM'],
    },
    beyond,
  )
}

function rowOf(
  range: Length,
  mass: Mass,
  launch: Speed,
  point: TrajectoryPoint,
  quick: TrajectoryPoint,
  rough: TrajectoryPoint,
): FlightRow {
  const error = (of: 'speed' | 'drop' | 'time') => Math.hypot(quick[of] - point[of], rough[of] - point[of]) / NUDGE
  const { speed, drop, time } = point
  const sd = error('speed')
  return {
    range,
    speed: positiveBand(speed, metresPerSecond(sd)),
    energy: positiveBand(joules((mass * speed ** 2) / 2), joules(mass * speed * sd)),
    momentum: positiveBand(kilogramMetresPerSecond(mass * speed), kilogramMetresPerSecond(mass * sd)),
    drop: symmetricBand(drop, metres(error('drop'))),
    time: symmetricBand(time, seconds(error('time'))),
    energyKept: ratio((speed / launch) ** 2),
  }
}
