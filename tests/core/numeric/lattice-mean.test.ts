import { describe, expect, it } from 'vitest'
import { latticeMean } from '@/core/numeric/lattice-mean'

describe('latticeMean', () => {
  it('has the moments of the normal distribution', () => {
    expect(latticeMean(([x]) => x!, 1)).toBeCloseTo(0, 2)
    expect(latticeMean(([x]) => x! ** 2, 1)).toBeCloseTo(1, 2)
    expect(latticeMean(([x, y]) => x! * y!, 2)).toBeCloseTo(0, 2)
  })

  // P(x > 0, y > 0, z > 0) of independent normals is 1/8.
  it('finds an octant', () => {
    expect(Math.abs(latticeMean((z) => (z.every((x) => x > 0) ? 1 : 0), 3) - 1 / 8)).toBeLessThan(0.002)
  })

  it('takes as many dimensions as there are lots', () => {
    const mean = latticeMean((z) => (z.reduce((a, b) => a + b, 0) > 0 ? 1 : 0), 30)
    expect(Math.abs(mean - 0.5)).toBeLessThan(0.02)
  })

  it('asks once where nothing varies', () => expect(latticeMean(() => 0.3, 0)).toBe(0.3))
})
