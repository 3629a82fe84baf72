import { jStat } from 'jstat'
import { describe, expect, it } from 'vitest'
import { normalCdf } from '@/core/numeric/distributions/normal-cdf'
import { sweep } from '@tests/support/sweep'

describe('normalCdf', () => {
  // [AS64] Table 26.1 (M), and the e-Handbook's 1.3.6.7.1 table of the area from the middle (M), plus one half.
  it.each([
    { z: 0, published: 0.5, halfUnit: 1e-15 },
    { z: 1, published: 0.841344746068543, halfUnit: 5e-16 },
    { z: 2, published: 0.977249868051821, halfUnit: 5e-16 },
    { z: 3, published: 0.99865010196837, halfUnit: 5e-16 },
    { z: 1.96, published: 0.5 + 0.475, halfUnit: 0.000005 },
    { z: 2.58, published: 0.5 + 0.49506, halfUnit: 0.000005 },
  ])('is the published $published at $z', ({ z, published, halfUnit }) => {
    expect(Math.abs(normalCdf(z) - published)).toBeLessThanOrEqual(halfUnit)
  })

  // Tail, [AS64] Table 26.2 (M): −log10 of the tail at 5 is 6.54265, at 10 is 23.11805.
  it.each([
    { z: -5, minusLog: 6.54265 },
    { z: -10, minusLog: 23.11805 },
  ])('keeps its digits far out at $z', ({ z, minusLog }) => {
    expect(Math.abs(-Math.log10(normalCdf(z)) - minusLog)).toBeLessThanOrEqual(0.000005)
  })

  it('agrees with jstat over a sweep, rises, and is symmetric', () => {
    const zs = sweep(-8, 8, 801)
    for (const z of zs) {
      expect(Math.abs(normalCdf(z) - jStat.normal.cdf(z, 0, 1))).toBeLessThan(1e-12)
      expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 14)
    }
    expect(zs.every((z, i) => i === 0 || normalCdf(z) >= normalCdf(zs[i - 1]!))).toBe(true)
  })

  it('reaches 0 and 1 at the ends, and refuses what is no number', () => {
    expect(normalCdf(-Infinity)).toBe(0)
    expect(normalCdf(Infinity)).toBe(1)
    expect(() => normalCdf(NaN)).toThrow(RangeError)
  })
})
