import { CHRONOGRAPH_SD, READING_BOUNDS } from '../bow/reading'
import type { Finding } from '../finding'
import { positiveBand } from '../numeric/band'
import { type Estimate, type Outcome, bounds, known, noAnswer, term, within } from '../outcome'
import {
  type Density,
  type Length,
  type Mass,
  type Ratio,
  type Speed,
  kilogramsPerCubicMetre,
  metres,
  ratio,
} from '../quantity'
import { outside, refusal } from '../refusal'
import { PUBLISHED_DRAG } from './drag-band'
import { decayOf } from './drag-decay'
import { FLIGHT_BOUNDS } from './flight-bounds'

/** The same arrow's speed at two distances, each a reading or the mean of several shots. */
export interface TwoSpeeds {
  readonly near: Speed
  readonly far: Speed
  readonly apart: Length
  readonly mass: Mass
  readonly diameter: Length
  readonly density: Density
}

const APART_BOUNDS = bounds(metres(1), metres(200))
const AIR_BOUNDS = bounds(kilogramsPerCubicMetre(0.3), FLIGHT_BOUNDS.density.max)
const CLOSE = 0.25
const TOO_CLOSE = 1

/**
 * Drag coefficient of an arrow from its speed at two distances.
 *
 *   k = ln(v₁/v₂)/Δx,   C_d = 2·m·k/(ρ·A)
 *
 * Gravity is left out: between two places of one height it gives back what it takes, so both should stand level.
 *
 * @param speedSd standard error of each speed
 * @returns the coefficient; says `distances-too-close` and `drag-beyond-published` beside it; none where the far speed is
 * not lower, or not by more than its error; or `outside-model`
 *
 * Source: [MECHANICS]; the error by [GUM] 5.1.2; published coefficients [MIYAZAKI20], [ORTIZ20].
 */
export function dragFromTwoSpeeds(flight: TwoSpeeds, speedSd: Speed = CHRONOGRAPH_SD): Outcome<Estimate<Ratio>> {
  const { near, far, apart, mass, diameter, density } = flight
  const refused = refusal([
    ...outside('near speed', near, READING_BOUNDS.speed, 'ft/s'),
    ...outside('far speed', far, READING_BOUNDS.speed, 'ft/s'),
    ...outside('chronograph error', speedSd, READING_BOUNDS.speedSd, 'ft/s'),
    ...outside('distance between the two speeds', apart, APART_BOUNDS, 'yd'),
    ...outside('arrow weight', mass, FLIGHT_BOUNDS.mass, 'gr'),
    ...outside('shaft diameter', diameter, FLIGHT_BOUNDS.diameter, 'mm'),
    ...outside('air density', density, AIR_BOUNDS, 'kg/m³'),
  ])
  if (refused) return refused
  if (far >= near) return noAnswer({ code: 'speed-does-not-fall-with-distance', near, far })
  const lost = Math.log(near / far)
  const uncertainty = ratio(Math.hypot(speedSd / near, speedSd / far) / lost)
  const close: Finding = { code: 'distances-too-close', apart, uncertainty, speedSd }
  if (uncertainty > TOO_CLOSE) return noAnswer(close)
  const value = ratio(lost / apart / decayOf(mass, diameter, density, 1))
  const drag = positiveBand(value, ratio(value * uncertainty))
  const { min: low, max: high } = PUBLISHED_DRAG
  const unusual: readonly Finding[] = within(value, PUBLISHED_DRAG)
    ? []
    : [{ code: 'drag-beyond-published', drag: value, low, high }]
  return known(
    drag,
    {
      equation: 'C_d = 2·m·ln(v₁/v₂) / (ρ·(π·d²/4)·Δx)',
      inputs: [
        term('near speed', near, 'ft/s'),
        term('far speed', far, 'ft/s'),
        term('error of one speed', speedSd, 'ft/s'),
        term('distance between the two speeds', apart, 'yd'),
        term('arrow weight', mass, 'gr'),
        term('shaft diameter', diameter, 'mm'),
        term('air density', density, 'kg/m³'),
      ],
      result: [term('drag coefficient', value, '1'), term('standard error of the drag coefficient', drag.sd, '1')],
      source: ['MECHANICS', 'GUM'],
      note: 'Gravity is left out: both places at one height.',
    },
    [...(uncertainty > CLOSE ? [close] : []), ...unusual],
  )
}
