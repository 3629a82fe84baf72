import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalCdf } from '@/core/numeric/distributions/normal-cdf'
import { grains, inGrains } from '@/core/quantity'
import { chanceAllReach } from '@/core/weight/chance-all-reach'
import { chanceToReach } from '@/core/weight/chance-to-reach'
import type { ForecastItem } from '@/core/weight/forecast-item'
import { forecastWeight } from '@/core/weight/forecast-weight'
import { sharedDirections } from '@/core/weight/shared-directions'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

interface Part {
  readonly gr: number
  readonly own?: number
  readonly shared?: number
  readonly key?: string
}
const forecast = (...parts: readonly Part[]) =>
  answer(
    forecastWeight(
      parts.map(
        ({ gr, own = 0, shared = 0, key = 'lot' }, i): ForecastItem => ({
          name: `part ${i}`,
          kind: 'expected',
          mean: grains(gr),
          ownSd: grains(own),
          sharedSd: grains(shared),
          sharedKey: key,
          origin: 'given',
        }),
      ),
    ),
  )
const WIDE = { target: grains(800), tolerance: grains(1), trimmable: grains(1000) }
const all = (...arrows: readonly (readonly Part[])[]) =>
  answer(chanceAllReach(arrows.map((parts) => ({ forecast: forecast(...parts), landing: WIDE }))))
const six = (part: Part) => Array.from({ length: 6 }, () => [part])

describe('chanceToReach', () => {
  it('is the normal chance above the lower edge', () => {
    // 1.0 gr above the lower edge of 799, standard deviation √(0.8² + 0.5²).
    const chance = answer(chanceToReach(forecast({ gr: 800, own: 0.5, shared: 0.8 }), WIDE))
    expect(chance).toBeCloseTo(normalCdf(1 / Math.hypot(0.5, 0.8)), 12)
  })

  it('falls again where the post cannot give enough', () => {
    const landing = { ...WIDE, trimmable: grains(5) }
    const chance = (gr: number) => answer(chanceToReach(forecast({ gr, own: 1 }), landing))
    expect(chance(806)).toBeCloseTo(0.5, 3)
    expect(chance(812)).toBeCloseTo(normalCdf(-6), 15)
    expect(chance(793)).toBeCloseTo(normalCdf(-6), 15)
    expect(chance(802.5)).toBeGreaterThan(0.99)
  })

  it('is certain of a weight that is known, both edges included', () => {
    const landing = { ...WIDE, trimmable: grains(5) }
    expect(answer(chanceToReach(forecast({ gr: 800 }), landing))).toBe(1)
    expect(answer(chanceToReach(forecast({ gr: 798.9 }), landing))).toBe(0)
    expect(answer(chanceToReach(forecast({ gr: 806.1 }), landing))).toBe(0)
  })

  it('rises with what the post can give', () => {
    const gr = fc.double({ min: 780, max: 850, noNaN: true })
    fc.assert(
      fc.property(
        gr,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (w, a, b) => {
          const chance = (trim: number) =>
            answer(chanceToReach(forecast({ gr: w, own: 1.5 }), { ...WIDE, trimmable: grains(trim) }))
          expect(chance(a + b)).toBeGreaterThanOrEqual(chance(a))
        },
      ),
    )
  })

  it.each([
    ['target', { target: grains(NaN) }],
    ['tolerance', { tolerance: grains(-1) }],
    ['what the post can give', { trimmable: grains(-0.1) }],
  ])('names a %s it cannot take', (input, change) => {
    const forecastNow = forecast({ gr: 800, own: 1 })
    expect(chanceToReach(forecastNow, { ...WIDE, ...change })).toMatchObject({ ok: false, findings: [{ input }] })
    expect(chanceAllReach([{ forecast: forecastNow, landing: { ...WIDE, ...change } }])).toMatchObject({
      ok: false,
      findings: [{ input }],
    })
  })

  it('names a forecast it cannot take', () => {
    const good = forecast({ gr: 800, own: 1, shared: 1 })
    const bad = { ...good, total: { ...good.total, sd: grains(NaN) }, sharedBy: [{ key: 'lot', sd: grains(-1) }] }
    expect(chanceToReach(bad, WIDE)).toMatchObject({
      ok: false,
      findings: [{ input: 'standard uncertainty' }, { input: 'shared standard deviation of lot' }],
    })
  })
})

describe('chanceAllReach', () => {
  // Six arrows, each expected 1.0 gr above the lower edge, shared 0.8 gr, own 0.5 gr: product 0.3918, joint 0.6654 (C).
  it('has the worked example', () => {
    const { joint, product } = all(...six({ gr: 800, own: 0.5, shared: 0.8 }))
    expect(Math.abs(product - 0.3918)).toBeLessThanOrEqual(0.00005)
    expect(Math.abs(joint - 0.6654)).toBeLessThanOrEqual(0.00005)
  })

  it('agrees with a seeded Monte Carlo of that example', () => {
    const normal = seededNormal(42)
    let reached = 0
    for (let i = 0; i < 100_000; i++) {
      const shared = 0.8 * normal()
      if (Array.from({ length: 6 }, () => 1 + shared + 0.5 * normal()).every((above) => above >= 0)) reached++
    }
    expect(Math.abs(reached / 100_000 - all(...six({ gr: 800, own: 0.5, shared: 0.8 })).joint)).toBeLessThan(0.005)
  })

  it('is the product when nothing is shared', () => {
    const { joint, product } = all(...six({ gr: 800, own: 0.7 }))
    expect(joint).toBeCloseTo(product, 11)
    expect(joint).toBeCloseTo(normalCdf(1 / 0.7) ** 6, 11)
  })

  it('is the chance of one arrow when everything is shared', () => {
    const { joint } = all(...six({ gr: 800, shared: 0.8 }))
    expect(joint).toBeCloseTo(normalCdf(1 / 0.8), 8)
  })

  it('is the chance of one arrow for a set of one', () => {
    const { joint, product } = all([{ gr: 800.4, own: 0.3, shared: 0.5 }])
    expect(joint).toBeCloseTo(product, 9)
  })

  it('counts two causes that move all arrows alike as one', () => {
    const two = all(
      ...six({ gr: 800, own: 0.5 }).map(([part]) => [
        part!,
        { gr: 0, shared: 0.48, key: 'a' },
        { gr: 0, shared: 0.64, key: 'b' },
      ]),
    )
    expect(two.joint).toBeCloseTo(all(...six({ gr: 800, own: 0.5, shared: 0.8 })).joint, 9)
  })

  it('takes a set of which half is weighed', () => {
    const weighed = [
      { gr: 800, own: 0.3 },
      { gr: 0, shared: 0.4, key: 'glue' },
    ]
    const open = [...weighed, { gr: 0, own: 0.5, shared: 0.9, key: 'shafts' }]
    const { joint } = all(weighed, weighed, open, open)
    const normal = seededNormal(3)
    let reached = 0
    for (let i = 0; i < 100_000; i++) {
      const glue = 0.4 * normal()
      const lot = 0.9 * normal()
      const above = [0, 0, 1, 1].map((isOpen) => 1 + glue + 0.3 * normal() + isOpen * (lot + 0.5 * normal()))
      if (above.every((gr) => gr >= 0)) reached++
    }
    expect(Math.abs(reached / 100_000 - joint)).toBeLessThan(0.006)
  })

  it('with the same direction asked two ways, lattice and quadrature agree', () => {
    // A third arrow that always reaches makes the directions differ, and changes nothing.
    const exact = all([{ gr: 800, own: 0.5, shared: 0.8 }], [{ gr: 800, own: 0.5, shared: 0.8 }]).joint
    const lattice = all(
      [{ gr: 800, own: 0.5, shared: 0.8 }],
      [{ gr: 800, own: 0.5, shared: 0.8 }],
      [
        { gr: 1000, own: 0.5, shared: 0.8 },
        { gr: 0, shared: 0.5, key: 'other' },
      ],
    ).joint
    expect(Math.abs(lattice - exact)).toBeLessThan(0.001)
  })

  it('lies between the product and the least single chance', () => {
    const part = fc.record({
      gr: fc.double({ min: 797, max: 804, noNaN: true }),
      own: fc.double({ min: 0, max: 2, noNaN: true }),
      shared: fc.double({ min: 0, max: 2, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const { joint, product } = all(...parts.map((each) => [each]))
        const least = Math.min(...parts.map((each) => answer(chanceToReach(forecast(each), WIDE))))
        expect(joint).toBeGreaterThanOrEqual(product - 1e-6)
        expect(joint).toBeLessThanOrEqual(least + 1e-6)
      }),
    )
  })

  it('gives nothing for no arrow', () => {
    expect(chanceAllReach([])).toMatchObject({ ok: false, findings: [{ code: 'nothing-to-forecast' }] })
  })
})

describe('sharedDirections', () => {
  const errors = (...gr: readonly (readonly [string, number])[]) => gr.map(([key, n]) => ({ key, sd: grains(n) }))

  it('merges what moves the arrows in the same proportions and leaves the rest', () => {
    const directions = sharedDirections([
      errors(['a', 1], ['b', 2], ['c', 0]),
      errors(['a', 2], ['b', 4]),
      errors(['d', 1]),
    ])
    expect(directions.map((direction) => direction.map((sd) => inGrains(grains(1)) && sd / grains(1)))).toEqual([
      [expect.closeTo(Math.sqrt(5), 9), expect.closeTo(Math.sqrt(20), 9), 0],
      [0, 0, expect.closeTo(1, 9)],
    ])
  })
})
