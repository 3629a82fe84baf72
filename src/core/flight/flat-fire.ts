import { type Outcome, known, noAnswer, term } from '../outcome'
import {
  type Length,
  type Ratio,
  type Speed,
  type Time,
  type Wavenumber,
  metresPerSecond,
  ratio,
  seconds,
} from '../quantity'
import { outside, refusal } from '../refusal'
import { FLIGHT_BOUNDS } from './flight-bounds'

/** Beyond e⁻¹⁰ of its speed nothing flies flat, or at all. */
export const MOST_DECAY = 10

export interface FlatFire {
  readonly speed: Speed
  readonly energyKept: Ratio
  readonly time: Time
}

/**
 * Speed, share of the energy kept and time of an arrow that drag slows on a straight line, gravity left out.
 *
 *   v = v₀·e^(−kx),   E/E₀ = e^(−2kx),   t = (e^(kx) − 1)/(k·v₀)
 *
 * @param decay k, as {@link dragDecay} gives it; 0 in vacuum
 * @returns the three at the range; `range-beyond-flight` past {@link MOST_DECAY}; or `outside-model`
 *
 * Source: [MECHANICS].
 */
export function flatFire(launch: Speed, decay: Wavenumber, range: Length): Outcome<FlatFire> {
  const refused = refusal([
    ...outside('launch speed', launch, FLIGHT_BOUNDS.speed, 'ft/s'),
    ...outside('loss of speed with distance', decay, FLIGHT_BOUNDS.decay, '1/m'),
    ...outside('range', range, FLIGHT_BOUNDS.range, 'yd'),
  ])
  if (refused) return refused
  const lost = decay * range
  if (lost > MOST_DECAY) return noAnswer({ code: 'range-beyond-flight', range })
  const flight = {
    speed: metresPerSecond(launch * Math.exp(-lost)),
    energyKept: ratio(Math.exp(-2 * lost)),
    time: seconds(decay > 0 ? Math.expm1(lost) / (decay * launch) : range / launch),
  }
  return known(flight, {
    equation: 'v = v₀·e^(−k·x),  E/E₀ = e^(−2·k·x),  t = (e^(k·x) − 1)/(k·v₀)',
    inputs: [
      term('launch speed', launch, 'ft/s'),
      term('loss of speed with distance', decay, '1/m'),
      term('range', range, 'yd'),
    ],
    result: [
      term('retained speed', flight.speed, 'ft/s'),
      term('energy kept', flight.energyKept, '%'),
      term('time of flight', flight.time, 's'),
    ],
    source: ['MECHANICS'],
    note: 'Gravity is left out.',
  })
}
