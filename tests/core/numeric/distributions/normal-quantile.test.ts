import { jStat } from 'jstat'
import { describe, expect, it } from 'vitest'
import { normalCdf } from '@/core/numeric/distributions/normal-cdf'
import { normalQuantile } from '@/core/numeric/distributions/normal-quantile'
import { sweep } from '@tests/support/sweep'

describe('normalQuantile', () => {
  // [AS64] Table 26.5 (M), also the last row of the e-Handbook's t table 1.3.6.7.2.
  it.each([
    { p: 0.9, published: 1.28155, halfUnit: 0.000005 },
    { p: 0.95, published: 1.64485, halfUnit: 0.000005 },
    { p: 0.975, published: 1.959964, halfUnit: 0.0000005 },
    { p: 0.995, published: 2.57583, halfUnit: 0.000005 },
    { p: 0.999, published: 3.09023, halfUnit: 0.000005 },
    { p: 0.5, published: 0, halfUnit: 1e-15 },
  ])('is the published $published at $p', ({ p, published, halfUnit }) => {
    expect(Math.abs(normalQuantile(p) - published)).toBeLessThanOrEqual(halfUnit)
  })

  it('agrees with jstat and undoes the distribution function', () => {
    for (const p of sweep(0.001, 0.999, 999)) {
      expect(Math.abs(normalQuantile(p) - jStat.normal.inv(p, 0, 1))).toBeLessThan(1e-7)
      expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 13)
    }
    for (const p of [1e-300, 1e-100, 1e-16]) expect(normalCdf(normalQuantile(p)) / p).toBeCloseTo(1, 10)
  })

  it.each([0, 1, -0.1, 1.1, NaN])('refuses %d', (p) => {
    expect(() => normalQuantile(p)).toThrow(RangeError)
  })
})
