import { describe, expect, it } from 'vitest'
import { grains, hours, inGrains, inQuadrature } from '@/core/quantity'
import { readingUncertainty } from '@/core/weight/reading-uncertainty'
import { scaleCheck } from '@/core/weight/scale-check'
import { scaleError } from '@/core/weight/scale-error'
import { toleranceUncertainty } from '@/core/weight/tolerance-uncertainty'
import { STEP_BOUNDS } from '@/core/weight/weight-bounds'
import { answer } from '@tests/support/answer'

const SCALE = { step: grains(0.1), repeatability: grains(0.07), calibration: grains(0.05), driftPerHour: grains(0.1) }

describe('readingUncertainty', () => {
  // [GUM] F.2.2.1 (M); the figures stand in the calculation notes: 0.1 gr → 0.028868 gr, a tared difference 0.040825.
  it('is the rounding of the display', () => {
    expect(Math.abs(inGrains(answer(readingUncertainty(grains(0.1)))) - 0.028868)).toBeLessThanOrEqual(5e-7)
    expect(Math.abs(inGrains(answer(readingUncertainty(grains(0.1), true))) - 0.040825)).toBeLessThanOrEqual(5e-7)
  })

  it.each([0, -0.1, NaN, Infinity, 100.1])('gives nothing for a step of %d gr', (step) => {
    expect(readingUncertainty(grains(step))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', bounds: STEP_BOUNDS }],
    })
  })
})

describe('toleranceUncertainty', () => {
  // [TN1297] 4.6 (M): ±0.5 → 0.5/√3 = 0.288675.
  it('takes every value inside the tolerance as equally likely', () => {
    expect(inGrains(answer(toleranceUncertainty(grains(0.5))))).toBeCloseTo(0.288_675_1, 7)
  })

  // Independent parts in quadrature: 0.5, 0.3, 0.2, 0.2, 0.1 → 0.655744 (C); worst case 1.3.
  it('adds in quadrature with others', () => {
    const parts = [0.5, 0.3, 0.2, 0.2, 0.1].map(grains)
    expect(Math.abs(inGrains(inQuadrature(...parts)) - 0.655744)).toBeLessThanOrEqual(5e-7)
  })

  it.each([0, -1, NaN, Infinity])('gives nothing for ±%d gr', (tolerance) => {
    expect(toleranceUncertainty(grains(tolerance))).toMatchObject({ ok: false, findings: [{ code: 'outside-model' }] })
  })
})

describe('scaleError', () => {
  it('keeps each reading’s own apart from what all share', () => {
    const { own, shared } = answer(scaleError(SCALE, hours(2)))
    expect(inGrains(own)).toBeCloseTo(0.07, 12)
    expect(inGrains(shared)).toBeCloseTo(Math.hypot(0.05, 0.2), 12)
  })

  it('falls back on the rounding where repeated readings were never tried', () => {
    const untried = { ...SCALE, repeatability: grains(0) }
    expect(inGrains(answer(scaleError(untried, hours(0))).own)).toBeCloseTo(0.1 / Math.sqrt(12), 12)
    expect(inGrains(answer(scaleError(untried, hours(0), true)).own)).toBeCloseTo(0.1 / Math.sqrt(6), 12)
  })

  it.each([
    ['display step', { step: grains(0) }],
    ['repeatability', { repeatability: grains(-1) }],
    ['calibration', { calibration: grains(NaN) }],
    ['drift per hour', { driftPerHour: grains(Infinity) }],
  ])('names a %s it cannot take', (input, change) => {
    expect(scaleError({ ...SCALE, ...change }, hours(1))).toMatchObject({ ok: false, findings: [{ input }] })
  })

  it('names a check that lies ahead', () => {
    expect(scaleError(SCALE, hours(-1))).toMatchObject({ ok: false, findings: [{ input: 'time since check' }] })
  })
})

describe('scaleCheck', () => {
  const check = (readings: number[], weight = 1000, sd = 0.02, step = 0.1) =>
    scaleCheck(readings.map(grains), grains(weight), grains(sd), grains(step))

  // By hand: mean 1000.3, s = 0.1, u = √(0.01/3 + 0.01/12 + 0.0004) = 0.067577.
  it('finds how far off a scale is, and how well that is known', () => {
    const outcome = check([1000.2, 1000.3, 1000.4])
    const { error, calibration, repeatability } = answer(outcome)
    expect(inGrains(error)).toBeCloseTo(0.3, 9)
    expect(inGrains(calibration)).toBeCloseTo(0.067_577, 6)
    expect(inGrains(repeatability)).toBeCloseTo(0.1, 9)
    expect(outcome.findings).toMatchObject([{ code: 'scale-off', by: error }])
  })

  it('is content with a scale that is right, even from one reading', () => {
    const outcome = check([1000])
    expect(outcome.findings).toEqual([])
    expect(inGrains(answer(outcome).repeatability)).toBeCloseTo(0.1 / Math.sqrt(12), 9)
  })

  it('sees a scale that reads light', () => {
    expect(check([999.5, 999.5]).findings).toMatchObject([{ code: 'scale-off' }])
  })

  it.each([
    ['no reading', [], 1000, 0.02, 0.1, 'too-few-values'],
    ['a reading that is no number', [NaN], 1000, 0.02, 0.1, 'outside-model'],
    ['a check weight of nothing', [1], 0, 0.02, 0.1, 'outside-model'],
    ['a negative uncertainty', [1000], 1000, -1, 0.1, 'outside-model'],
    ['a display without steps', [1000], 1000, 0.02, 0, 'outside-model'],
  ])('gives nothing for %s', (_, readings, weight, sd, step, code) => {
    expect(check(readings, weight, sd, step)).toMatchObject({ ok: false, findings: [{ code }] })
  })
})
