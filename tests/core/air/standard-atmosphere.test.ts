import { describe, expect, it } from 'vitest'
import { ALTITUDE_BOUNDS, standardAtmosphere } from '@/core/air/standard-atmosphere'
import { metres } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { sweep } from '@tests/support/sweep'

describe('standardAtmosphere', () => {
  // [USSA76] Table I, by height above the sea. Tolerance: half a unit in the last printed place.
  it.each([
    { z: 0, density: 1.225 },
    { z: 1000, density: 1.1117 },
    { z: 2000, density: 1.0066 },
    { z: 3000, density: 0.9093 },
  ])('is the published $density kg/m³ at $z m', ({ z, density }) => {
    expect(Math.abs(answer(standardAtmosphere(metres(z))).density - density)).toBeLessThanOrEqual(0.00005)
  })

  // [USSA76] Table I at 11 000 m above the sea, from memory: 216.774 K, 0.36480 kg/m³.
  it('is 216.774 K and 0.3648 kg/m³ at the top of its layer', () => {
    const air = answer(standardAtmosphere(metres(11_000)))
    expect(Math.abs(air.temperature - 216.774)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(air.density - 0.3648)).toBeLessThanOrEqual(0.000005)
  })

  it('has standard pressure and 15 °C at the sea', () => {
    expect(answer(standardAtmosphere(metres(0)))).toMatchObject({ temperature: 288.15, pressure: 101_325 })
  })

  it('gets thinner, colder and weaker with height over the whole range', () => {
    const airs = sweep(ALTITUDE_BOUNDS.min, ALTITUDE_BOUNDS.max).map((z) => answer(standardAtmosphere(metres(z))))
    airs.slice(1).forEach((air, i) => {
      expect(air.density).toBeLessThan(airs[i]!.density)
      expect(air.pressure).toBeLessThan(airs[i]!.pressure)
      expect(air.temperature).toBeLessThan(airs[i]!.temperature)
    })
  })

  it.each([-5000.001, 11_000.001, Number.NaN, Number.POSITIVE_INFINITY])('gives no air at %d m', (z) => {
    expect(standardAtmosphere(metres(z))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input: 'altitude', bounds: ALTITUDE_BOUNDS }],
    })
  })
})
