import fc from 'fast-check'
import { jStat } from 'jstat'
import { describe, expect, it } from 'vitest'
import { grains, inGrains, ratio } from '@/core/quantity'
import { type CatalogueWeight, predictedPart } from '@/core/weight/predicted-part'
import { answer } from '@tests/support/answer'
import { sweep } from '@tests/support/sweep'

const INSERT: CatalogueWeight = { nominal: grains(100), tolerance: grains(0.5) }
const singles = (...weights: number[]) => weights.map((gr) => ({ mass: grains(gr), pieces: 1 }))
const halfWidth = (catalogue: CatalogueWeight, ...weights: number[]) => {
  const { low, high } = answer(predictedPart(catalogue, singles(...weights))).estimate
  return inGrains(high) / 2 - inGrains(low) / 2
}

describe('predictedPart', () => {
  it('is the catalogue while nothing is weighed', () => {
    const { estimate, ownSd, sharedSd, degrees, pieces } = answer(predictedPart(INSERT, []))
    expect(inGrains(estimate.value)).toBeCloseTo(100, 12)
    // [TN1297] 4.6 (M): t/√3, split 4 : 1 between pieces and lots.
    expect(inGrains(estimate.sd)).toBeCloseTo(0.5 / Math.sqrt(3), 12)
    expect(ownSd ** 2 / estimate.sd ** 2).toBeCloseTo(0.8, 12)
    expect(sharedSd ** 2 / estimate.sd ** 2).toBeCloseTo(0.2, 12)
    expect(degrees).toBeUndefined()
    expect(pieces).toBe(0)
    expect(inGrains(estimate.high)).toBeCloseTo(100 + (1.959_964 * 0.5) / Math.sqrt(3), 6)
  })

  // Two readings whose bare t (12.706 at one degree) would give ±1.1 gr where the catalogue says ±0.5.
  it('tempers the t of two readings with the catalogue', () => {
    const apart = 1.1 / (12.706 * Math.sqrt(1.5)) / Math.SQRT1_2 // their distance, so that s gives that band
    const tempered = halfWidth(INSERT, 100 - apart / 2, 100 + apart / 2)
    expect(tempered).toBeLessThan(0.5)
    expect(tempered).toBeGreaterThan(0.2)
  })

  // Many readings alone predict Student t with n − 1 degrees, scale s·√(1 + 1/n); t from jstat.
  it('comes to Student’s t when much is weighed', () => {
    const weights = sweep(99.2, 100.4, 400)
    const mean = weights.reduce((a, b) => a + b) / weights.length
    const s = Math.sqrt(weights.reduce((a, b) => a + (b - mean) ** 2, 0) / (weights.length - 1))
    const bare = jStat.studentt.inv(0.975, weights.length - 1) * s * Math.sqrt(1 + 1 / weights.length)
    expect(halfWidth(INSERT, ...weights) / bare).toBeCloseTo(1, 2)
    const { estimate } = answer(predictedPart(INSERT, singles(...weights)))
    expect(inGrains(estimate.value)).toBeCloseTo(mean, 2)
  })

  // By hand: κ₀ = 4, n = k = 2, x̄ − nominal = 0.2, s₀² = 0.8·0.25/3 = 0.066667;
  // s² = (3·0.066667 + 0.02 + (8/6)·0.04)/5 = 0.0546667; mean = 100 + 0.2·2/6; degrees 25/2.
  it('has the values worked by hand for two readings', () => {
    const { estimate, ownSd, sharedSd, degrees } = answer(predictedPart(INSERT, singles(100.1, 100.3)))
    expect(inGrains(estimate.value)).toBeCloseTo(100 + 0.4 / 6, 10)
    expect(inGrains(ownSd) ** 2).toBeCloseTo(0.054_666_67, 8)
    expect(inGrains(sharedSd) ** 2).toBeCloseTo(0.054_666_67 / 6, 8)
    expect(degrees).toBe(12.5)
  })

  it('takes a batch for its pieces’ mean: one weighing says little of the spread', () => {
    const batch = answer(predictedPart(INSERT, [{ mass: grains(1002), pieces: 10 }]))
    const one = answer(predictedPart(INSERT, singles(100.2)))
    expect(inGrains(batch.estimate.value)).toBeCloseTo(100 + (0.2 * 10) / 14, 9)
    expect(batch.sharedSd).toBeLessThan(one.sharedSd)
    expect(batch.degrees).toBe(one.degrees)
    expect(batch.pieces).toBe(10)
  })

  it('says when a lot lies outside the catalogue, and not when it lies on its edge', () => {
    expect(predictedPart(INSERT, singles(100.6)).findings).toMatchObject([{ code: 'lot-off-catalogue', pieces: 1 }])
    expect(predictedPart(INSERT, singles(100.4)).findings).toEqual([])
  })

  it('widens when a reading surprises it', () => {
    expect(halfWidth(INSERT, 102)).toBeGreaterThan(halfWidth(INSERT))
  })

  it('narrows what is shared with every piece that agrees', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (n) => {
        const shared = (count: number) =>
          answer(predictedPart(INSERT, singles(...Array.from({ length: count }, () => 100)))).sharedSd
        expect(shared(n)).toBeLessThan(shared(n - 1))
      }),
    )
  })

  it('is the same in whatever order the pieces were weighed, and scales with the weights', () => {
    const weights = fc.array(fc.double({ min: 90, max: 110, noNaN: true }), { minLength: 1, maxLength: 12 })
    fc.assert(
      fc.property(weights, fc.double({ min: 0.1, max: 5, noNaN: true }), (ws, factor) => {
        const here = answer(predictedPart(INSERT, singles(...ws)))
        const back = answer(predictedPart(INSERT, singles(...ws.toReversed())))
        expect(inGrains(back.estimate.high)).toBeCloseTo(inGrains(here.estimate.high), 9)
        const bigger = { nominal: grains(100 * factor), tolerance: grains(0.5 * factor) }
        const scaled = answer(predictedPart(bigger, singles(...ws.map((w) => w * factor))))
        expect(inGrains(scaled.estimate.low)).toBeCloseTo(inGrains(here.estimate.low) * factor, 8)
      }),
    )
  })

  it('tells in its working what was catalogue and what was read', () => {
    const outcome = predictedPart(INSERT, singles(100.1))
    expect(outcome.ok && outcome.derivation.inputs.map(({ origin }) => origin)).toEqual([
      'catalogue',
      'catalogue',
      'assumed',
      'read',
    ])
  })

  it.each([
    ['catalogue weight', { nominal: grains(-1) }, []],
    ['catalogue tolerance', { tolerance: grains(0) }, []],
    ['catalogue tolerance', { tolerance: grains(NaN) }, []],
    ['share of the spread within a lot', { ownShare: ratio(1) }, []],
    ['share of the spread within a lot', { ownShare: ratio(0) }, []],
    ['reading', {}, singles(Infinity)],
    ['pieces weighed together', {}, [{ mass: grains(100), pieces: 0 }]],
  ])('names a %s it cannot take', (input, change, readings) => {
    expect(predictedPart({ ...INSERT, ...change }, readings)).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input }],
    })
  })
})
