import fc from 'fast-check'
import { jStat } from 'jstat'
import { describe, expect, it } from 'vitest'
import { incompleteBeta } from '@/core/numeric/distributions/incomplete-beta'

describe('incompleteBeta', () => {
  // Closed forms: I_x(1, b) = 1 − (1 − x)^b, I_x(a, 1) = x^a, I_½(a, a) = ½.
  it('has its closed forms', () => {
    expect(incompleteBeta(0.3, 1, 4)).toBeCloseTo(1 - 0.7 ** 4, 14)
    expect(incompleteBeta(0.3, 2.5, 1)).toBeCloseTo(0.3 ** 2.5, 14)
    for (const a of [0.5, 1, 7, 200, 1e6]) expect(incompleteBeta(0.5, a, a)).toBeCloseTo(0.5, 8)
    expect(incompleteBeta(0, 2, 3)).toBe(0)
    expect(incompleteBeta(1, 2, 3)).toBe(1)
  })

  it('agrees with jstat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        (x, a, b) => {
          expect(Math.abs(incompleteBeta(x, a, b) - jStat.ibeta(x, a, b))).toBeLessThan(1e-7)
        },
      ),
    )
  })

  it('stays between 0 and 1 and is finite wherever it is asked', () => {
    const shape = fc.double({ min: 1e-3, max: 1e9, noNaN: true })
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), shape, shape, (x, a, b) => {
        const share = incompleteBeta(x, a, b)
        expect(share >= -1e-9 && share <= 1 + 1e-9).toBe(true)
      }),
      { numRuns: 2000 },
    )
  })

  it.each([
    [-0.1, 1, 1],
    [1.1, 1, 1],
    [NaN, 1, 1],
    [0.5, 0, 1],
    [0.5, 1, -1],
  ])('refuses %d, %d, %d', (x, a, b) => {
    expect(() => incompleteBeta(x, a, b)).toThrow(RangeError)
  })
})
