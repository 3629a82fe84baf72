import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { humidAirDensity } from '@/core/air/humid-air-density'
import { standardAtmosphere } from '@/core/air/standard-atmosphere'
import { celsius, metres, pascals, percent, quantity } from '@/core/quantity'
import { answer } from '@tests/support/answer'

describe('humidAirDensity', () => {
  // [CIPM07]; vectors published with the stated tolerance of 1e-4 kg/m³.
  it.each([
    { c: 10, mmHg: 730, humidity: 40, density: 1.19569 },
    { c: 40, mmHg: 760, humidity: 40, density: 1.11497 },
  ])('is the published $density kg/m³ at $c °C, $mmHg mmHg, $humidity %', ({ c, mmHg, humidity, density }) => {
    const found = answer(humidAirDensity(celsius(c), quantity(mmHg, 'mmHg'), percent(humidity)))
    expect(Math.abs(found - density)).toBeLessThanOrEqual(1e-4)
  })

  // [CIPM07] computed a second time, in another language, from the equation and constants as published.
  it.each([
    { c: 20, pa: 101_325, rh: 50, density: 1.199_313_895_5 },
    { c: -20, pa: 101_325, rh: 80, density: 1.395_100_458_3 },
    { c: 35, pa: 85_000, rh: 90, density: 0.939_580_555_4 },
    { c: 45, pa: 105_000, rh: 100, density: 1.110_458_716_4 },
    { c: 0, pa: 60_000, rh: 0, density: 0.765_501_925_4 },
  ])('is $density kg/m³ at $c °C, $pa Pa, $rh %', ({ c, pa, rh, density }) => {
    expect(Math.abs(answer(humidAirDensity(celsius(c), pascals(pa), percent(rh))) - density)).toBeLessThan(1e-10)
  })

  it('agrees with the standard atmosphere on dry air, but for 0.1 %', () => {
    const standard = answer(standardAtmosphere(metres(0)))
    const dry = answer(humidAirDensity(standard.temperature, standard.pressure, percent(0)))
    expect(Math.abs(dry / standard.density - 1)).toBeLessThan(0.001)
  })

  it('rises with pressure, falls with temperature and with humidity', () => {
    const t = fc.double({ min: -40, max: 49, noNaN: true })
    const p = fc.double({ min: 50_000, max: 109_000, noNaN: true })
    const h = fc.double({ min: 0, max: 90, noNaN: true })
    fc.assert(
      fc.property(t, p, h, (c, pa, rh) => {
        const of = (dc: number, dp: number, dh: number) =>
          answer(humidAirDensity(celsius(c + dc), pascals(pa + dp), percent(rh + dh)))
        const here = of(0, 0, 0)
        return of(0, 1000, 0) > here && of(1, 0, 0) < here && of(0, 0, 10) < here
      }),
    )
  })

  it('says when the air is outside what the equation was published for', () => {
    const codes = (c: number, pa: number) =>
      humidAirDensity(celsius(c), pascals(pa), percent(50)).findings.map(({ code }) => code)
    expect(codes(20, 101_325)).toEqual([])
    expect(codes(14.9, 101_325)).toEqual(['air-beyond-published-range'])
    expect(codes(27.1, 101_325)).toEqual(['air-beyond-published-range'])
    expect(codes(20, 59_999)).toEqual(['air-beyond-published-range'])
  })

  it.each([
    { c: -40.01, pa: 1e5, rh: 50, input: 'air temperature' },
    { c: 50.01, pa: 1e5, rh: 50, input: 'air temperature' },
    { c: Number.NaN, pa: 1e5, rh: 50, input: 'air temperature' },
    { c: 20, pa: 49_999, rh: 50, input: 'air pressure' },
    { c: 20, pa: 110_001, rh: 50, input: 'air pressure' },
    { c: 20, pa: 1e5, rh: -0.1, input: 'relative humidity' },
    { c: 20, pa: 1e5, rh: 100.1, input: 'relative humidity' },
  ])('gives no density at $c °C, $pa Pa, $rh %', ({ c, pa, rh, input }) => {
    expect(humidAirDensity(celsius(c), pascals(pa), percent(rh))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
