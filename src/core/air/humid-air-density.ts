import type { Finding } from '../finding'
import { type Outcome, bounds, known, term, within } from '../outcome'
import {
  type Density,
  type Pressure,
  type Ratio,
  type Temperature,
  celsius,
  inCelsius,
  kilogramsPerCubicMetre,
  pascals,
  ratio,
} from '../quantity'
import { outside, refusal } from '../refusal'

// [CIPM07] appendix A.1; the paper's own constants.
const R = 8.314_472 // J/(mol·K), CODATA 2006
const DRY_MOLAR_MASS = 28.965_46e-3 // kg/mol at 400 µmol/mol of carbon dioxide
const WATER_MOLAR_MASS = 18.015_28e-3 // kg/mol
const SATURATION = { a: 1.237_884_7e-5, b: -1.912_131_6e-2, c: 33.937_110_47, d: -6.343_164_5e3 } // T in K, p in Pa
const ENHANCEMENT = { alpha: 1.000_62, beta: 3.14e-8, gamma: 5.6e-7 } // p in Pa, t in °C
const COMPRESSIBILITY = {
  a0: 1.581_23e-6, // K/Pa
  a1: -2.9331e-8, // 1/Pa
  a2: 1.1043e-10, // 1/(K·Pa)
  b0: 5.707e-6, // K/Pa
  b1: -2.051e-8, // 1/Pa
  c0: 1.9898e-4, // K/Pa
  c1: -2.376e-6, // 1/Pa
  d: 1.83e-11, // K²/Pa²
  e: -0.765e-8, // K²/Pa²
}

/** Where it is used here, hunting weather included. */
export const AIR_BOUNDS = Object.freeze({
  temperature: bounds(celsius(-40), celsius(50)),
  pressure: bounds(pascals(50_000), pascals(110_000)),
  humidity: bounds(ratio(0), ratio(1)),
})
/** Where it was published for, with an error of 22 parts in a million. */
export const PUBLISHED_AIR = Object.freeze({
  temperature: bounds(celsius(15), celsius(27)),
  pressure: bounds(pascals(60_000), pascals(110_000)),
})

/**
 * Density of moist air from temperature, pressure and relative humidity.
 *
 *   ρ = p·M_a/(Z·R·T) · (1 − x_v·(1 − M_v/M_a)),   x_v = h·f(p, t)·p_sv(t)/p
 *
 * @param pressure at the place, not reduced to sea level
 * @param humidity relative, over water also below freezing
 * @returns the density, with `air-beyond-published-range` outside {@link PUBLISHED_AIR}; or `outside-model`
 *
 * Source: [CIPM07], the whole equation at 400 µmol/mol of carbon dioxide.
 */
export function humidAirDensity(temperature: Temperature, pressure: Pressure, humidity: Ratio): Outcome<Density> {
  const refused = refusal([
    ...outside('air temperature', temperature, AIR_BOUNDS.temperature, 'K'),
    ...outside('air pressure', pressure, AIR_BOUNDS.pressure, 'Pa'),
    ...outside('relative humidity', humidity, AIR_BOUNDS.humidity, '%'),
  ])
  if (refused) return refused
  const vapour = (humidity * enhancement(temperature, pressure) * saturation(temperature)) / pressure
  const z = compressibility(temperature, pressure, vapour)
  const dry = (pressure * DRY_MOLAR_MASS) / (z * R * temperature)
  const density = kilogramsPerCubicMetre(dry * (1 - vapour * (1 - WATER_MOLAR_MASS / DRY_MOLAR_MASS)))
  const isPublished = within(temperature, PUBLISHED_AIR.temperature) && within(pressure, PUBLISHED_AIR.pressure)
  const findings: readonly Finding[] = isPublished
    ? []
    : [{ code: 'air-beyond-published-range', temperature, pressure }]
  return known(
    density,
    {
      equation: 'ρ = p·M_a/(Z·R·T) · (1 − x_v·(1 − M_v/M_a)),  x_v = h·f·p_sv/p',
      inputs: [
        term('air temperature', temperature, 'K'),
        term('air pressure', pressure, 'Pa'),
        term('relative humidity', humidity, '%'),
      ],
      result: [term('air density', density, 'kg/m³')],
      source: ['CIPM07'],
    },
    findings,
  )
}

/** Vapour pressure at saturation over water, Pa. */
const saturation = (t: number) => Math.exp(SATURATION.a * t ** 2 + SATURATION.b * t + SATURATION.c + SATURATION.d / t)

const enhancement = (temperature: Temperature, pressure: Pressure) =>
  ENHANCEMENT.alpha + ENHANCEMENT.beta * pressure + ENHANCEMENT.gamma * inCelsius(temperature) ** 2

/** Z, how far moist air is from an ideal gas. */
function compressibility(temperature: Temperature, pressure: Pressure, vapour: number): number {
  const { a0, a1, a2, b0, b1, c0, c1, d, e } = COMPRESSIBILITY
  const t = inCelsius(temperature)
  const perKelvin = pressure / temperature
  return (
    1 -
    perKelvin * (a0 + a1 * t + a2 * t ** 2 + (b0 + b1 * t) * vapour + (c0 + c1 * t) * vapour ** 2) +
    perKelvin ** 2 * (d + e * vapour ** 2)
  )
}
