import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutPlan, type CutPlanQuestion } from '@/core/cut/cut-plan'
import { inches, inInches } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const question = (raw: number, c2c: number, offNock?: number, kerf = 0.04, leastPiece = 0.2): CutPlanQuestion => ({
  rawLength: inches(raw),
  c2c: inches(c2c),
  kerf: inches(kerf),
  leastPiece: inches(leastPiece),
  ...(offNock === undefined ? {} : { offNock: inches(offNock) }),
})
const near = (...numbers: number[]) => numbers.map((n) => expect.closeTo(n, 9))
const planned = (...args: Parameters<typeof question>) => {
  const { offNock, offPoint, pieceNock, piecePoint, cuts } = answer(cutPlan(question(...args)))
  return [...[offNock, offPoint, pieceNock, piecePoint].map((l) => inInches(l)), cuts]
}

describe('cutPlan', () => {
  it('takes the same off both ends, the kerf counted within', () => {
    expect(planned(32, 28)).toEqual(near(2, 2, 1.96, 1.96, 2))
    expect(cutPlan(question(32, 28)).findings).toEqual([])
  })

  it('takes off the nock end what run-out asks for', () => {
    expect(planned(32, 28, 3.1)).toEqual(near(3.1, 0.9, 3.06, 0.86, 2))
    expect(planned(32, 28, 0)).toEqual(near(0, 4, 0, 3.96, 1))
    expect(planned(32, 28, 4)).toEqual(near(4, 0, 3.96, 0, 1))
  })

  it('leaves no end with a piece the saw cannot take', () => {
    const slight = cutPlan(question(32, 28, 0.15))
    expect(inInches(answer(slight).offNock)).toBeCloseTo(0.24, 10)
    expect(slight.findings).toMatchObject([{ code: 'cut-moved-along', wished: inches(0.15) }])
    expect(inInches(answer(cutPlan(question(32, 28, 0.1))).offNock)).toBe(0)
    expect(inInches(answer(cutPlan(question(32, 28, 3.85))).offNock)).toBeCloseTo(3.76, 10)
    expect(inInches(answer(cutPlan(question(32, 28, 3.95))).offNock)).toBeCloseTo(4, 10)
  })

  it('takes all off the point end when there is too little for two cuts, and says so', () => {
    const found = cutPlan(question(32, 31.6))
    expect(answer(found)).toMatchObject({ offNock: 0, cuts: 1 })
    expect(found.findings).toMatchObject([{ code: 'cut-from-one-end', least: expect.closeTo(inches(0.24), 12) }])
  })

  it('cuts nothing when the shaft has the length already', () => {
    expect(answer(cutPlan(question(30, 30)))).toMatchObject({
      offNock: 0,
      offPoint: 0,
      pieceNock: 0,
      piecePoint: 0,
      cuts: 0,
    })
    expect(answer(cutPlan(question(30, 30.004)))).toMatchObject({ cuts: 0 })
    expect(answer(cutPlan(question(30, 29.996)))).toMatchObject({ cuts: 0 })
  })

  it('says so when the shaft is too short, or is longer by less than a cut', () => {
    expect(cutPlan(question(30, 30.01))).toMatchObject({ ok: false, findings: [{ code: 'raw-shaft-too-short' }] })
    expect(cutPlan(question(30, 29.9))).toMatchObject({ ok: false, findings: [{ code: 'too-little-to-cut' }] })
  })

  it('always adds up to the raw shaft, with no piece shorter than the least', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 25, max: 33, noNaN: true }),
        fc.double({ min: 20, max: 25, noNaN: true }),
        fc.option(fc.double({ min: 0, max: 20, noNaN: true }), { nil: undefined }),
        (raw, c2c, offNock) => {
          const found = cutPlan(question(raw, c2c, offNock))
          fc.pre(found.ok)
          const plan = answer(found)
          expect(
            plan.cuts === 0 || Math.abs(inInches(plan.offNock) + inInches(plan.offPoint) - (raw - c2c)) < 1e-9,
          ).toBe(true)
          for (const [off, piece] of [
            [plan.offNock, plan.pieceNock],
            [plan.offPoint, plan.piecePoint],
          ] as const) {
            expect(off === 0 ? piece === 0 : inInches(piece) >= 0.2 - 1e-9).toBe(true)
          }
        },
      ),
    )
  })

  it.each([
    [question(9.9, 9), 'raw length'],
    [question(NaN, 28), 'raw length'],
    [question(32, 0.9), 'carbon to carbon'],
    [question(32, NaN), 'carbon to carbon'],
    [question(32, 28, -0.1), 'off the nock end'],
    [question(32, 28, 60.1), 'off the nock end'],
    [question(32, 28, NaN), 'off the nock end'],
    [question(32, 28, 1, -0.01), 'kerf'],
    [question(32, 28, 1, 0.51), 'kerf'],
    [question(32, 28, 1, 0.04, -0.1), 'least piece'],
    [question(32, 28, 1, 0.04, 2.1), 'least piece'],
  ])('plans nothing for %j', (asked, input) => {
    expect(cutPlan(asked)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
