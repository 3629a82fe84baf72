import { describe, expect, it } from 'vitest'
import { grains, inGrains } from '@/core/quantity'
import { setStatistics } from '@/core/statistics/set-statistics'
import { answer } from '@tests/support/answer'

const SET = [824.6, 825.1, 825.4, 824.9, 825.3, 825].map(grains)

describe('setStatistics', () => {
  // Worked by hand: Σ = 4950.3, mean 825.05, Σ(x − mean)² = 0.415, s = √0.083 = 0.28810.
  it('gives mean, spread and standard deviation of six arrows', () => {
    const set = answer(setStatistics(SET, 'gr'))
    expect(set.count).toBe(6)
    expect(inGrains(set.mean)).toBeCloseTo(825.05, 10)
    expect(inGrains(set.spread)).toBeCloseTo(0.8, 10)
    expect(inGrains(set.least)).toBeCloseTo(824.6, 10)
    expect(inGrains(set.greatest)).toBeCloseTo(825.4, 10)
    expect(inGrains(set.sd!)).toBeCloseTo(Math.sqrt(0.415 / 5), 9)
  })

  it('says when the spread is wider than the shop allows, and not when it is just as wide', () => {
    expect(setStatistics(SET, 'gr', grains(0.7)).findings).toMatchObject([
      { code: 'spread-over', limit: grains(0.7), unit: 'gr' },
    ])
    expect(setStatistics([grains(1), grains(3)], 'gr', grains(3 - 1)).findings).toEqual([])
  })

  it('gives one arrow a mean and no standard deviation', () => {
    const set = answer(setStatistics([grains(825)], 'gr'))
    expect(set).toMatchObject({ count: 1, spread: 0 })
    expect(set.sd).toBeUndefined()
  })

  it('shows its working', () => {
    const outcome = setStatistics(SET, 'gr')
    expect(outcome.ok && outcome.derivation.inputs).toHaveLength(6)
    expect(outcome.ok && outcome.derivation.result.map(({ name }) => name)).toEqual([
      'mean',
      'spread',
      'standard deviation',
    ])
  })

  it.each([
    ['no arrow', [], undefined, 'too-few-values'],
    ['no number', [grains(NaN)], undefined, 'outside-model'],
    ['a huge number', [grains(1), grains(1e300)], undefined, 'outside-model'],
    ['an endless limit', [grains(1)], grains(Infinity), 'outside-model'],
  ])('gives nothing for %s', (_, values, limit, code) => {
    expect(setStatistics(values, 'gr', limit)).toMatchObject({ ok: false, findings: [{ code }] })
  })
})
