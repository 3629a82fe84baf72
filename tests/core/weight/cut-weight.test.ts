import fc from 'fast-check'
import { derivative, evaluate, inv, matrix, multiply, transpose } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { grains, inGrains, inches, ratio } from '@/core/quantity'
import type { UnsureLength, UnsureWeight } from '@/core/weight/cut-weight'
import { cutWeight } from '@/core/weight/cut-weight'
import { answer } from '@tests/support/answer'

const weight = (mean: number, ownSd: number, sharedSd: number): UnsureWeight => ({
  mean: grains(mean),
  ownSd: grains(ownSd),
  sharedSd: grains(sharedSd),
})
const length = (inch: number, sd: number): UnsureLength => ({ length: inches(inch), sd: inches(sd) })
const LOT = weight(345, 2.5, 0.6)
const RAW = { ...weight(402.3, 0.076, 0.1), ...length(33, 0.04) }
const CUT = length(28.5, 0.01)
const UNKNOWN = weight(345, 9000, 0) // a lot that says as good as nothing

const varianceOf = ({ ownSd, sharedSd }: UnsureWeight) => inGrains(ownSd) ** 2 + inGrains(sharedSd) ** 2

/** Variance of w·c/r − e·w·(1 − c/r), e about 0, from the partial derivatives that mathjs finds: [GUM] 5.1.2. */
function propagated(w: number, r: number, c: number, sd: Readonly<Record<'w' | 'r' | 'c' | 'e', number>>): number {
  const at = { w, r, c, e: 0 }
  const model = 'w * c / r - e * w * (1 - c / r)'
  return (['w', 'r', 'c', 'e'] as const).reduce(
    (sum, name) => sum + ((derivative(model, name).evaluate(at) as number) * sd[name]) ** 2,
    0,
  )
}

/** Two measurements of one mean by generalized least squares, as matrices: (XᵀV⁻¹X)⁻¹ and its XᵀV⁻¹y. */
function leastSquares(values: readonly [number, number], variances: readonly [number, number]) {
  const x = matrix([[1], [1]])
  const y = matrix(values.map((value) => [value]))
  const weights = inv(
    matrix([
      [variances[0], 0],
      [0, variances[1]],
    ]),
  )
  const variance = evaluate('inv(m)[1, 1]', { m: multiply(multiply(transpose(x), weights), x) }) as number
  const sum = evaluate('m[1, 1]', { m: multiply(multiply(transpose(x), weights), y) }) as number
  return { mean: variance * sum, variance }
}

describe('cutWeight', () => {
  it('is the share of the raw weight where the lot says nothing: 400 gr of 32 in cut to 28', () => {
    const raw = { ...weight(400, 0, 0), ...length(32, 0) }
    expect(inGrains(answer(cutWeight(raw, length(28, 0), UNKNOWN)).mean)).toBeCloseTo(350, 6)
  })

  it('has the error that the partial derivatives give (mathjs)', () => {
    const raw = { ...weight(402.3, 0.5, 0), ...length(33, 0.2) }
    const expected = answer(cutWeight(raw, length(28.5, 0.1), weight(345, 10_000, 0), ratio(0.02)))
    const variance = propagated(402.3, 33, 28.5, { w: 0.5, r: 0.2, c: 0.1, e: 0.02 })
    expect(varianceOf(expected)).toBeCloseTo(variance, 4)
  })

  it('joins the two as generalized least squares does (mathjs)', () => {
    const variance = propagated(402.3, 33, 28.5, { w: Math.hypot(0.076, 0.1), r: 0.04, c: 0.01, e: 0.01 })
    const joined = leastSquares([(402.3 * 28.5) / 33, 345], [variance, varianceOf(LOT)])
    const expected = answer(cutWeight(RAW, CUT, LOT))
    expect(inGrains(expected.mean)).toBeCloseTo(joined.mean, 9)
    expect(varianceOf(expected)).toBeCloseTo(joined.variance, 9)
  })

  it('keeps the error of the scale shared, and nothing else', () => {
    const scaleAlone = { ...weight(402.3, 0, 0.3), ...length(33, 0) }
    const { ownSd, sharedSd } = answer(cutWeight(scaleAlone, length(28.5, 0), UNKNOWN, ratio(0)))
    expect(inGrains(sharedSd)).toBeCloseTo((0.3 * 28.5) / 33, 6)
    expect(inGrains(ownSd)).toBeLessThan(1e-4)
  })

  it('is the lot’s where the lot is known exactly', () => {
    const exact = weight(345, 0, 0)
    expect(answer(cutWeight(RAW, CUT, exact))).toEqual(exact)
  })

  it('lies between the two and is no less sure than the surer', () => {
    const sd = fc.integer({ min: 0, max: 2000 }).map((n) => n / 100)
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 600, noNaN: true }),
        fc.double({ min: 28.5, max: 36, noNaN: true }),
        sd,
        sd,
        sd,
        sd,
        (w, r, own, shared, lotOwn, lotShared) => {
          const lot = weight(345, lotOwn, lotShared)
          const expected = answer(cutWeight({ ...weight(w, own, shared), ...length(r, 0.04) }, CUT, lot))
          const [low, high] = [(w * 28.5) / r, 345].toSorted((a, b) => a - b)
          expect(inGrains(expected.mean)).toBeGreaterThanOrEqual(low! - 1e-9)
          expect(inGrains(expected.mean)).toBeLessThanOrEqual(high! + 1e-9)
          expect(varianceOf(expected)).toBeLessThanOrEqual(varianceOf(lot) * (1 + 1e-9))
        },
      ),
    )
  })

  it('is asked to its ends: cut at its raw length, raw at the longest, unevenness from none to all', () => {
    const whole = answer(cutWeight({ ...RAW, ...length(60, 1) }, length(60, 1), UNKNOWN, ratio(1)))
    expect(inGrains(whole.mean)).toBeCloseTo(402.3, 1)
    expect(cutWeight({ ...RAW, ...length(60.01, 0) }, CUT, LOT)).toMatchObject({ findings: [{ input: 'raw length' }] })
    expect(cutWeight(RAW, length(9.99, 0), LOT)).toMatchObject({ findings: [{ input: 'cut length' }] })
    for (const e of [-0.01, 1.01])
      expect(cutWeight(RAW, CUT, LOT, ratio(e))).toMatchObject({ findings: [{ input: 'unevenness' }] })
  })

  it.each([
    ['a shaft shorter than it is to be cut', { ...RAW, ...length(28, 0) }, CUT, LOT, 'cut length'],
    ['a weight that is no number', { ...RAW, mean: grains(NaN) }, CUT, LOT, 'raw weight'],
    ['a lot without a weight', RAW, CUT, { ...LOT, mean: grains(-1) }, 'expected cut weight'],
    ['an error below nothing', { ...RAW, ownSd: grains(-1) }, CUT, LOT, 'standard deviation'],
    ['a length that nobody knows', RAW, length(28.5, 2), LOT, 'standard deviation of a length'],
  ])('gives nothing for %s', (_, raw, cut, lot, input) => {
    expect(cutWeight(raw, cut, lot)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
