import { describe, expect, it } from 'vitest'
import { normalCdf, normalDensity } from '@/core/numeric/distributions/normal-cdf'
import { adaptiveIntegral } from '@/core/numeric/adaptive-integral'

describe('adaptiveIntegral', () => {
  // Closed forms.
  it.each([
    { name: 'a polynomial of degree 12', f: (x: number) => x ** 12, from: -1, to: 1, exact: 2 / 13 },
    { name: 'the exponential', f: Math.exp, from: 0, to: 3, exact: Math.exp(3) - 1 },
    { name: 'a narrow bell', f: (x: number) => normalDensity(x / 0.001) / 0.001, from: -0.02, to: 0.2, exact: 1 },
    { name: 'a root', f: Math.sqrt, from: 0, to: 1, exact: 2 / 3 },
    { name: 'the normal density', f: normalDensity, from: -1.5, to: 2, exact: normalCdf(2) - normalCdf(-1.5) },
  ])('is exact for $name', ({ f, from, to, exact }) => {
    expect(Math.abs(adaptiveIntegral(f, [from, 0.1, to], 1e-11) - exact)).toBeLessThan(1e-10)
  })

  it('finds a step that lies on no point', () => {
    const step = (x: number) => (x < Math.SQRT1_2 ? 1 : 0)
    expect(Math.abs(adaptiveIntegral(step, [0, 1], 1e-9) - Math.SQRT1_2)).toBeLessThan(1e-8)
  })

  it('is nothing over no panel', () => {
    expect(adaptiveIntegral(Math.exp, [1], 1e-9)).toBe(0)
    expect(adaptiveIntegral(Math.exp, [], 1e-9)).toBe(0)
  })
})
