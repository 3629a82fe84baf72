import { type Outcome, bounds, known, term } from '../outcome'
import {
  type Density,
  type Length,
  type Pressure,
  STANDARD_GRAVITY_SI,
  type Temperature,
  kelvins,
  kilogramsPerCubicMetre,
  metres,
  pascals,
} from '../quantity'
import { outside, refusal } from '../refusal'

const SEA_TEMPERATURE = 288.15 // K
const SEA_PRESSURE = 101_325 // Pa
const LAPSE = -0.0065 // K/m, to 11 km
const MOLAR_MASS = 0.028_964_4 // kg/mol
const R = 8.314_32 // J/(mol·K); the 1976 value, not today's CODATA, so that the table reproduces
const EARTH = 6_356_766 // m, the radius that turns height above the sea into geopotential height, eq. 18
const EXPONENT = (-STANDARD_GRAVITY_SI * MOLAR_MASS) / (R * LAPSE)

/** Where the model holds: its lowest layer. */
export const ALTITUDE_BOUNDS = bounds(metres(-5000), metres(11_000))

export interface StandardAir {
  readonly temperature: Temperature
  readonly pressure: Pressure
  readonly density: Density
}

/**
 * Temperature, pressure and density of dry standard air at a height above the sea as a map gives it.
 *
 *   h = r·z/(r + z),   T = T₀ + L·h,   p = p₀·(T/T₀)^(−g₀M/RL),   ρ = pM/RT
 *
 * @returns the air, or `outside-model` when the altitude is not within {@link ALTITUDE_BOUNDS}
 *
 * Source: [USSA76] eqs. 18, 23, 33a, 42.
 * Error: none against its table to the printed digits. Weather is not in it: −20 °C at sea level is 14 % denser.
 */
export function standardAtmosphere(altitude: Length): Outcome<StandardAir> {
  const refused = refusal(outside('altitude', altitude, ALTITUDE_BOUNDS, 'm'))
  if (refused) return refused
  const geopotential = (EARTH * altitude) / (EARTH + altitude) // m
  const t = SEA_TEMPERATURE + LAPSE * geopotential
  const p = SEA_PRESSURE * (t / SEA_TEMPERATURE) ** EXPONENT
  const air = {
    temperature: kelvins(t),
    pressure: pascals(p),
    density: kilogramsPerCubicMetre((p * MOLAR_MASS) / (R * t)),
  }
  return known(air, {
    equation: 'T = T₀ + L·h,  p = p₀·(T/T₀)^(−g₀M/RL),  ρ = p·M/(R·T)',
    inputs: [term('altitude', altitude, 'm')],
    result: [
      term('air temperature', air.temperature, 'K'),
      term('air pressure', air.pressure, 'Pa'),
      term('air density', air.density, 'kg/m³'),
    ],
    source: ['USSA76'],
    note: 'Dry standard air; the weather of the day is not in it.',
  })
}
