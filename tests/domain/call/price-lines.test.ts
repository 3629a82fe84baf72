import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { priceOf, shareOf } from '@/domain/call/price-lines'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { told } from './told-call'

const rules = {
  ...DEFAULT_RULES,
  prices: {
    perArrowCents: 8_950,
    indexingCents: 450,
    testKitCents: 12_000,
    rushCents: 7_500,
    depositPercent: 50,
    taxPercent: 7.25,
  },
}

describe('priceOf', () => {
  it('adds arrows, spares, indexing, test kit and rush, then tax, then the deposit', () => {
    const price = priceOf(told({ quantity: 6, spares: 2, indexing: 'spine mark', testKit: true, rush: true }), rules)
    expect(price.lines.map(({ what, count, cents }) => [what, count, cents])).toEqual([
      ['arrows', 6, 53_700],
      ['spares', 2, 17_900],
      ['indexing', 8, 3_600],
      ['test kit', 1, 12_000],
      ['rush', 1, 7_500],
    ])
    expect(price.subtotalCents).toBe(94_700)
    expect(price.taxCents).toBe(6_866) // 6 865.75
    expect(price.totalCents).toBe(101_566)
    expect(price.depositCents).toBe(50_783)
  })

  it('leaves out what was not asked for', () => {
    const price = priceOf(told({ quantity: 3, spares: 0, indexing: 'none', testKit: false }), rules)
    expect(price.lines.map(({ what }) => what)).toEqual(['arrows'])
  })

  it('takes six arrows until a number is told', () => {
    expect(priceOf(told({}), rules).lines[0]).toMatchObject({ what: 'arrows', count: 6 })
  })
})

describe('shareOf', () => {
  it('rounds half a cent up', () => {
    expect(shareOf(10, 5)).toBe(1)
    expect(shareOf(9, 5)).toBe(0)
    expect(shareOf(0, 50)).toBe(0)
    expect(shareOf(100, 100)).toBe(100)
  })

  it('is whole, and within half a cent of the exact share', () => {
    const cents = fc.integer({ min: 0, max: 100_000_000 })
    const thousandths = fc.integer({ min: 0, max: 100_000 })
    fc.assert(
      fc.property(cents, thousandths, (amount, share) => {
        const rounded = shareOf(amount, share / 1000)
        expect(Number.isInteger(rounded)).toBe(true)
        expect(Math.abs(rounded - (amount * share) / 100_000)).toBeLessThanOrEqual(0.5 + 1e-6)
      }),
    )
  })
})
