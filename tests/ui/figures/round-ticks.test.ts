import { scaleLinear } from 'd3-scale'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roundTicks } from '@/ui/figures/landing/round-ticks'

const SPANS = fc
  .tuple(fc.double({ min: -1e4, max: 1e4, noNaN: true }), fc.double({ min: 0.01, max: 1e4, noNaN: true }))
  .map(([low, span]) => [low, low + span] as const)

describe('roundTicks', () => {
  it('are a few evenly spaced numbers between the ends', () => {
    fc.assert(
      fc.property(SPANS, ([low, high]) => {
        const ticks = roundTicks(low, high, 5)
        expect(ticks.length).toBeGreaterThanOrEqual(2)
        expect(ticks.length).toBeLessThanOrEqual(9)
        expect(ticks[0]).toBeGreaterThanOrEqual(low - 1e-9)
        expect(ticks.at(-1)).toBeLessThanOrEqual(high + 1e-9)
      }),
    )
  })

  it.each([
    [826, 846],
    [823.2, 829.1],
    [0, 1],
    [-3, 12],
  ])('are those of d3-scale from %d to %d', (low, high) => {
    expect(roundTicks(low, high, 5)).toEqual(scaleLinear([low, high], [0, 1]).ticks(5))
  })

  it.each([
    [1, 1],
    [2, 1],
    [NaN, 1],
    [0, Infinity],
  ])('are none from %d to %d', (low, high) => {
    expect(roundTicks(low, high, 5)).toEqual([])
  })
})
