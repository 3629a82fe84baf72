import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { grains, inGrains } from '@/core/quantity'
import { expectedItem, type ForecastItem, readItem } from '@/core/weight/forecast-item'
import { forecastSet } from '@/core/weight/forecast-set'
import { forecastWeight } from '@/core/weight/forecast-weight'
import { predictedPart } from '@/core/weight/predicted-part'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

const item = (name: string, gr: number, own: number, shared = 0, sharedKey?: string): ForecastItem => ({
  name,
  kind: 'expected',
  mean: grains(gr),
  ownSd: grains(own),
  sharedSd: grains(shared),
  ...(sharedKey === undefined ? {} : { sharedKey }),
  origin: 'catalogue',
})
const error = { own: grains(0.07), shared: grains(0.05) }

describe('forecastWeight', () => {
  // Independent parts: 0.5, 0.3, 0.2, 0.2, 0.1 → 0.655744 (C).
  it('adds independent parts in quadrature', () => {
    const { total } = answer(forecastWeight([0.5, 0.3, 0.2, 0.2, 0.1].map((sd, i) => item(`part ${i}`, 100, sd))))
    expect(inGrains(total.value)).toBeCloseTo(500, 9)
    expect(Math.abs(inGrains(total.sd) - 0.655744)).toBeLessThanOrEqual(5e-7)
    expect(inGrains(total.high) - 500).toBeCloseTo(1.959_964 * 0.655_744, 5)
  })

  it('adds what one cause does to several parts linearly', () => {
    const { sharedSd, ownSd, sharedBy } = answer(
      forecastWeight([item('a', 10, 0, 0.1, 'scale'), item('b', 10, 0, 0.2, 'scale'), item('c', 10, 0, 0.4, 'lot')]),
    )
    expect(inGrains(sharedSd)).toBeCloseTo(Math.hypot(0.3, 0.4), 12)
    expect(ownSd).toBe(0)
    expect(sharedBy.map(({ key, sd }) => [key, inGrains(sd)])).toEqual([
      ['scale', expect.closeTo(0.3, 12)],
      ['lot', expect.closeTo(0.4, 12)],
    ])
  })

  it('counts a shared part without a cause as the arrow’s own', () => {
    const { ownSd, sharedSd } = answer(forecastWeight([item('a', 10, 0.3, 0.4)]))
    expect(inGrains(ownSd)).toBeCloseTo(0.5, 12)
    expect(sharedSd).toBe(0)
  })

  it('knows what was read from what is expected, and says so in its working', () => {
    const vanes = answer(predictedPart({ nominal: grains(7), tolerance: grains(0.2) }, []))
    const outcome = forecastWeight([
      readItem({ name: 'cut shaft', sharedKey: 'scale 1', ref: 'A3' }, grains(341.2), error),
      expectedItem({ name: 'vanes', sharedKey: 'lot V1' }, vanes, 4),
    ])
    const forecast = answer(outcome)
    expect(inGrains(forecast.read)).toBeCloseTo(341.2, 9)
    expect(inGrains(forecast.expected)).toBeCloseTo(28, 9)
    expect(outcome.ok && outcome.derivation.inputs.filter((_, i) => i % 3 === 0)).toMatchObject([
      { name: 'cut shaft', origin: 'read', ref: 'A3' },
      { name: 'vanes', origin: 'catalogue' },
    ])
  })

  it('lets four vanes of a lot share that lot’s unknown mean', () => {
    const learned = answer(
      predictedPart(
        { nominal: grains(7), tolerance: grains(0.2) },
        [7.1, 7.05].map((gr) => ({ mass: grains(gr), pieces: 1 })),
      ),
    )
    const four = expectedItem({ name: 'vanes', sharedKey: 'lot V1', ref: 'V1' }, learned, 4)
    expect(inGrains(four.sharedSd)).toBeCloseTo(4 * inGrains(learned.sharedSd), 12)
    expect(inGrains(four.ownSd)).toBeCloseTo(2 * inGrains(learned.ownSd), 12)
    expect(four).toMatchObject({ origin: 'lot history', degrees: 12.5 })
  })

  it('gives one learned part the band of its own prediction', () => {
    const learned = answer(
      predictedPart(
        { nominal: grains(100), tolerance: grains(0.5) },
        [100.1, 100.4, 99.9].map((gr) => ({ mass: grains(gr), pieces: 1 })),
      ),
    )
    const { total, degrees } = answer(forecastWeight([expectedItem({ name: 'insert', sharedKey: 'lot I' }, learned)]))
    expect(degrees).toBeCloseTo(learned.degrees!, 9)
    expect(inGrains(total.high)).toBeCloseTo(inGrains(learned.estimate.high), 9)
  })

  it('holds the degrees of two learned lots together as [GUM] G.4.1 does', () => {
    const a = { ...item('a', 1, 0.3), degrees: 5 }
    const b = { ...item('b', 1, 0.4), degrees: 10 }
    const { degrees } = answer(forecastWeight([a, b, item('c', 1, 0)]))
    expect(degrees).toBeCloseTo(0.25 ** 2 / (0.09 ** 2 / 5 + 0.16 ** 2 / 10), 9)
    const { degrees: together } = answer(
      forecastWeight([
        { ...item('a', 1, 0.3, 0.1, 'lot'), degrees: 5 },
        { ...item('b', 1, 0.4, 0.1, 'lot'), degrees: 8 },
      ]),
    )
    expect(together).toBeCloseTo(5, 9)
  })

  it('never widens an arrow’s own band by a reading when variances are known', () => {
    const sd = fc.double({ min: 0.1, max: 5, noNaN: true })
    fc.assert(
      fc.property(fc.array(fc.tuple(sd, sd), { minLength: 1, maxLength: 8 }), fc.nat(), (sds, pick) => {
        const items = sds.map(([own, shared], i) => item(`part ${i}`, 50, own, shared, `lot ${i % 3}`))
        const i = pick % items.length
        const read = items.with(
          i,
          readItem({ name: 'read', sharedKey: 'scale' }, grains(50), { own: grains(0.07), shared: grains(0) }),
        )
        expect(answer(forecastWeight(read)).total.sd).toBeLessThanOrEqual(answer(forecastWeight(items)).total.sd)
      }),
    )
  })

  it('agrees with a seeded Monte Carlo', () => {
    const normal = seededNormal(7)
    const items = [
      item('a', 300, 1, 4, 'x'),
      item('b', 28, 0.2, 0.4, 'y'),
      item('c', 30, 0.3, 0.5, 'y'),
      item('d', 9, 0.6),
    ]
    const { total } = answer(forecastWeight(items))
    let inside = 0
    let square = 0
    for (let i = 0; i < 40_000; i++) {
      const shared = { x: normal(), y: normal() }
      const weight = items.reduce(
        (w, { mean, ownSd, sharedSd, sharedKey }) =>
          w + mean + ownSd * normal() + sharedSd * (sharedKey ? shared[sharedKey as 'x' | 'y'] : 0),
        0,
      )
      square += (weight - total.value) ** 2
      if (weight >= total.low && weight <= total.high) inside++
    }
    expect(Math.sqrt(square / 40_000) / total.sd).toBeCloseTo(1, 1.7)
    expect(Math.abs(inside / 40_000 - 0.95)).toBeLessThan(0.005)
  })

  it('takes a weight known exactly', () => {
    const { total } = answer(forecastWeight([item('a', 5, 0)]))
    expect(total).toEqual({ value: grains(5), sd: 0, low: grains(5), high: grains(5) })
  })

  it.each([
    ['nothing', [], { code: 'nothing-to-forecast' }],
    ['a weight that is no number', [item('post', NaN, 1)], { code: 'outside-model', input: 'post' }],
    ['an endless own spread', [item('post', 1, Infinity)], { input: 'own standard deviation of post' }],
    ['a negative shared spread', [item('post', 1, 1, -1)], { input: 'shared standard deviation of post' }],
    ['no degrees', [{ ...item('post', 1, 1), degrees: 0 }], { input: 'degrees of freedom of post' }],
  ])('gives nothing for %s', (_, items, finding) => {
    expect(forecastWeight(items)).toMatchObject({ ok: false, findings: [finding] })
  })
})

describe('forecastSet', () => {
  const arrow = [item('shaft', 300, 1, 4, 'lot S'), item('head', 250, 1)]

  it('averages out what is each arrow’s own and keeps what they share', () => {
    const { arrows, mean } = answer(forecastSet([arrow, arrow, arrow, arrow]))
    expect(arrows).toHaveLength(4)
    expect(inGrains(mean.value)).toBeCloseTo(550, 9)
    expect(inGrains(mean.sd)).toBeCloseTo(Math.sqrt(2 / 4 + 16), 9)
    expect(mean.high - mean.value).toBeCloseTo(1.959_964 * mean.sd, 9)
  })

  it('carries the working of each arrow', () => {
    const outcome = forecastSet([arrow, arrow])
    expect(outcome.ok && outcome.derivation.steps).toHaveLength(2)
  })

  it('gives nothing for no arrow, and names what is wrong in one of several', () => {
    expect(forecastSet([])).toMatchObject({ ok: false, findings: [{ code: 'nothing-to-forecast' }] })
    expect(forecastSet([arrow, [item('head', -1, 1)]])).toMatchObject({ ok: false, findings: [{ input: 'head' }] })
  })
})
