import { jStat } from 'jstat'
import { describe, expect, it } from 'vitest'
import { normalCdf } from '@/core/numeric/distributions/normal-cdf'
import { studentTCdf } from '@/core/numeric/distributions/student-t-cdf'
import { studentTQuantile } from '@/core/numeric/distributions/student-t-quantile'
import { sweep } from '@tests/support/sweep'

describe('studentTQuantile', () => {
  // [EHANDBOOK] 1.3.6.7.2, upper critical values of Student's t, to three decimals (M).
  it.each([
    { degrees: 1, published: [3.078, 6.314, 12.706, 31.821, 63.657] },
    { degrees: 2, published: [1.886, 2.92, 4.303, 6.965, 9.925] },
    { degrees: 3, published: [1.638, 2.353, 3.182, 4.541, 5.841] },
    { degrees: 4, published: [1.533, 2.132, 2.776, 3.747, 4.604] },
    { degrees: 5, published: [1.476, 2.015, 2.571, 3.365, 4.032] },
    { degrees: 10, published: [1.372, 1.812, 2.228, 2.764, 3.169] },
    { degrees: 20, published: [1.325, 1.725, 2.086, 2.528, 2.845] },
    { degrees: 30, published: [1.31, 1.697, 2.042, 2.457, 2.75] },
    { degrees: 100, published: [1.29, 1.66, 1.984, 2.364, 2.626] },
    { degrees: Infinity, published: [1.282, 1.645, 1.96, 2.326, 2.576] },
  ])('has the published row of $degrees degrees', ({ degrees, published }) => {
    for (const [i, p] of [0.9, 0.95, 0.975, 0.99, 0.995].entries()) {
      expect(Math.abs(studentTQuantile(p, degrees) - published[i]!)).toBeLessThanOrEqual(0.0005 + 1e-12)
    }
  })

  it('has the closed forms of one and two degrees', () => {
    for (const p of sweep(0.01, 0.99, 99)) {
      expect(studentTQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 10)
      expect(studentTQuantile(p, 2)).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 11)
    }
  })

  it('agrees with jstat', () => {
    for (const degrees of [1, 1.5, 3, 7.25, 19, 60, 250]) {
      for (const p of sweep(0.005, 0.995, 67)) {
        expect(Math.abs(studentTQuantile(p, degrees) - jStat.studentt.inv(p, degrees))).toBeLessThan(1e-5)
      }
    }
  })

  it('is exactly in the middle at one half', () => expect(studentTQuantile(0.5, 3)).toBe(0))

  it.each([
    [0, 3],
    [1, 3],
    [NaN, 3],
    [0.9, 0.4],
    [0.9, NaN],
  ])('refuses the share %d at %d degrees', (p, degrees) => {
    expect(() => studentTQuantile(p, degrees)).toThrow(RangeError)
  })
})

describe('studentTCdf', () => {
  it('undoes the quantile and agrees with jstat', () => {
    for (const degrees of [0.5, 1, 2.5, 8, 40, 1e4, 1e9]) {
      for (const p of sweep(0.001, 0.999, 51)) {
        const t = studentTQuantile(p, degrees)
        expect(studentTCdf(t, degrees)).toBeCloseTo(p, 9)
      }
    }
    for (const t of sweep(-6, 6, 61)) expect(studentTCdf(t, 5)).toBeCloseTo(jStat.studentt.cdf(t, 5), 8)
  })

  it('becomes the normal distribution with many degrees', () => {
    expect(studentTCdf(1.3, 1e9)).toBeCloseTo(normalCdf(1.3), 8)
    expect(studentTCdf(1.3, Infinity)).toBe(normalCdf(1.3))
  })

  it('reaches the ends', () => {
    expect(studentTCdf(Infinity, 3)).toBe(1)
    expect(studentTCdf(-Infinity, 3)).toBe(0)
    expect(studentTCdf(1e200, 3)).toBe(1)
  })

  it.each([
    [NaN, 3],
    [1, 0],
    [1, NaN],
  ])('refuses %d at %d degrees', (t, degrees) => {
    expect(() => studentTCdf(t, degrees)).toThrow(RangeError)
  })
})
