import { describe, expect, it } from 'vitest'
import { grains, inGrains } from '@/core/quantity'
import { controlLimits } from '@/core/statistics/control-limits'
import { answer } from '@tests/support/answer'

// [EHANDBOOK] 6.3.2.2, flow rate of ten batches.
const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]

describe('controlLimits', () => {
  // [EHANDBOOK] 6.3.2.2: centre 50.81, mean moving range 1.8778, limits 55.8041 and 45.8159.
  it('has the published example', () => {
    const limits = answer(controlLimits(FLOW.map(grains), 'gr'))
    expect(Math.abs(inGrains(limits.centre) - 50.81)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(inGrains(limits.meanStep) - 1.8778)).toBeLessThanOrEqual(0.00005)
    expect(Math.abs(inGrains(limits.upper) - 55.8041)).toBeLessThanOrEqual(0.00006)
    expect(Math.abs(inGrains(limits.lower) - 45.8159)).toBeLessThanOrEqual(0.00006)
    expect(limits.beyond).toEqual([])
  })

  // D4 = 3.267 (M): 3.267 · 1.8778 = 6.1347.
  it('limits the steps too', () => {
    expect(inGrains(answer(controlLimits(FLOW.map(grains), 'gr')).stepUpper)).toBeCloseTo(3.267 * (16.9 / 9), 9)
  })

  it('names what lies beyond and keeps it in the mean', () => {
    const steady = Array.from({ length: 30 }, (_, i) => grains(10 + (i % 2) * 0.1))
    const outcome = controlLimits([...steady, grains(12), ...steady, grains(8)], 'gr')
    expect(outcome.findings).toEqual([{ code: 'beyond-control-limits', places: [31, 62] }])
    expect(answer(outcome).beyond).toEqual([31, 62])
    expect(controlLimits([...steady, grains(12), ...steady], 'gr').findings).toEqual([
      { code: 'beyond-control-limits', places: [31] },
    ])
  })

  it('has limits that touch when nothing moves', () => {
    const still = answer(controlLimits([grains(3), grains(3), grains(3)], 'gr'))
    expect(still.upper - still.lower).toBe(0)
    expect(still.beyond).toEqual([])
  })

  it.each([
    ['one value', [grains(1)], 'too-few-values'],
    ['no value', [], 'too-few-values'],
    ['no number', [grains(1), grains(NaN)], 'outside-model'],
    ['an endless value', [grains(1), grains(-Infinity)], 'outside-model'],
  ])('gives nothing for %s', (_, values, code) => {
    expect(controlLimits(values, 'gr')).toMatchObject({ ok: false, findings: [{ code }] })
  })
})
