import { describe, expect, it } from 'vitest'
import { NORMAL_95, positiveBand, symmetricBand } from '@/core/numeric/band'
import { feetPerSecond, grains, inFeetPerSecond, inGrains } from '@/core/quantity'

describe('the 95 % band', () => {
  // [EHANDBOOK] 1.3.6.7.1: the normal distribution's 0.975 point, 1.96.
  it('is 1.96 standard deviations to each side', () => {
    expect(NORMAL_95).toBeCloseTo(1.96, 2)
    const band = symmetricBand(grains(80), grains(30))
    expect(inGrains(band.low)).toBeCloseTo(21.2, 1)
    expect(inGrains(band.high)).toBeCloseTo(138.8, 1)
  })

  it('is nearly symmetric for a positive quantity that is well known', () => {
    const band = positiveBand(feetPerSecond(250), feetPerSecond(2.5))
    expect(inFeetPerSecond(band.low)).toBeCloseTo(245.1, 0)
    expect(inFeetPerSecond(band.high)).toBeCloseTo(254.9, 0)
  })

  it('never reaches zero for a positive quantity that is badly known', () => {
    const band = positiveBand(feetPerSecond(250), feetPerSecond(250))
    expect(band.low).toBeGreaterThan(0)
    expect(band.high * band.low).toBeCloseTo(band.value ** 2, 6)
  })
})
