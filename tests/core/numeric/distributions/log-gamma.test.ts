import { jStat } from 'jstat'
import { describe, expect, it } from 'vitest'
import { logGamma } from '@/core/numeric/distributions/log-gamma'
import { sweep } from '@tests/support/sweep'

describe('logGamma', () => {
  // Exact: Γ(n) = (n − 1)!, Γ(½) = √π, Γ(3/2) = √π/2.
  it.each([
    { x: 1, gamma: 1 },
    { x: 2, gamma: 1 },
    { x: 5, gamma: 24 },
    { x: 11, gamma: 3_628_800 },
    { x: 0.5, gamma: Math.sqrt(Math.PI) },
    { x: 1.5, gamma: Math.sqrt(Math.PI) / 2 },
  ])('is the logarithm of the exact $gamma at $x', ({ x, gamma }) => {
    expect(logGamma(x)).toBeCloseTo(Math.log(gamma), 13)
  })

  it('agrees with jstat over a sweep', () => {
    for (const x of sweep(0.05, 300, 500)) expect(Math.abs(logGamma(x) - jStat.gammaln(x))).toBeLessThan(1e-9)
  })

  it('keeps the recurrence Γ(x + 1) = x·Γ(x)', () => {
    for (const x of sweep(0.01, 40, 200)) expect(logGamma(x + 1) - logGamma(x)).toBeCloseTo(Math.log(x), 12)
  })

  it.each([0, -1, NaN, Infinity])('refuses %d', (x) => {
    expect(() => logGamma(x)).toThrow(RangeError)
  })
})
