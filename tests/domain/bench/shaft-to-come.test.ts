import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { grains, inGrains } from '@/core/quantity'
import type { BenchArrow } from '@/domain/bench/bench'
import type { DataPoint } from '@/domain/bench/data-points'
import { expectedAt } from '@/domain/bench/expected-at'
import { shaftToCome } from '@/domain/bench/shaft-to-come'
import { setLanding } from '@/domain/bench/set-forecast'
import { slipsOf } from '@/domain/bench/slips'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { demoSheet } from '@tests/support/demo-sheet'
import { testId } from '@tests/support/test-id'

const SHEET = demoSheet({ targetGr: 785, c2cIn: 28, quantity: 1 })
const worked = sheetFigures(SHEET)!
const planned = worked.items.find(({ part }) => part.kind === 'shaft')!
const RAW_IN = planned.part.kind === 'shaft' ? planned.part.rawLengthIn : NaN

const arrowWith = (readings: Partial<Record<DataPoint, number>>): BenchArrow => ({
  id: testId(1),
  no: 1,
  code: 'T/1',
  state: 'building',
  readings: Object.entries(readings).map(([point, value], i) => ({
    event: `${i}`.padStart(64, '0'),
    by: 'Ilse',
    step: 'receive',
    withdrawn: null,
    reading: {
      point: point as DataPoint,
      value,
      unit: point === 'rawWeight' ? ('gr' as const) : ('in' as const),
      raw: `${value}`,
      source: 'typed' as const,
      stable: true,
      attempt: 1,
      scale: 'Scale 1',
      takenAt: '2026-01-01T00:00:00.000Z',
    },
  })),
  confirmed: [],
  fitted: [],
})
const sd = ({ ownSd, sharedSd }: { ownSd: Parameters<typeof inGrains>[0]; sharedSd: Parameters<typeof inGrains>[0] }) =>
  Math.hypot(inGrains(ownSd), inGrains(sharedSd))
const come = (readings: Partial<Record<DataPoint, number>>, lotSd = inGrains(planned.item.ownSd)) =>
  shaftToCome({ ...planned, item: { ...planned.item, ownSd: grains(lotSd) } }, arrowWith(readings), SHEET)

describe('a shaft weighed raw', () => {
  it('brings its landing nearer to its own weight than to its lot’s', () => {
    const landing = (readings: Partial<Record<DataPoint, number>>) => {
      const bench = { arrows: [arrowWith(readings)], route: null } as unknown as Parameters<typeof setLanding>[0]
      const { forecast } = setLanding(bench, SHEET, worked.items).arrows.get(testId(1))!
      if (!forecast.ok) throw new Error('no forecast')
      const { total } = forecast.value
      return { value: inGrains(total.value), width: inGrains(total.high) - inGrains(total.low) }
    }
    const asPlanned = (inGrains(planned.item.mean) * RAW_IN) / 28
    const [unread, heavy] = [landing({}), landing({ rawWeight: asPlanned + 4, rawLength: RAW_IN })]
    const whole = (4 * 28) / RAW_IN
    expect(heavy.value - unread.value).toBeGreaterThan(0.5 * whole)
    expect(heavy.value - unread.value).toBeLessThanOrEqual(whole)
    expect(heavy.width).toBeLessThan(unread.width)
  })

  it('is worked out, not read: its own weight by length, where its lot says as good as nothing', () => {
    const item = come({ rawWeight: 400, rawLength: 32 }, 9000)
    expect(inGrains(item.mean)).toBeCloseTo(350, 5) // 400 · 28/32, by hand
    expect(item).toMatchObject({ kind: 'expected', origin: 'computed' })
    expect(item.ref).toContain('400 gr raw, cut from 32 to 28 in')
  })

  it('never widens the band of its own arrow, whatever its lot is known to', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 200, max: 600, noNaN: true }),
        fc.option(fc.double({ min: 28, max: 34, noNaN: true }), { nil: undefined }),
        (lotSd, rawWeight, rawLength) => {
          const item = come({ rawWeight, ...(rawLength === undefined ? {} : { rawLength }) }, lotSd)
          const before = Math.hypot(lotSd, inGrains(planned.item.sharedSd))
          expect(sd(item)).toBeLessThanOrEqual(before * (1 + 1e-12))
          const [low, high] = [inGrains(planned.item.mean), (rawWeight * 28) / (rawLength ?? RAW_IN)].toSorted(
            (a, b) => a - b,
          )
          expect(inGrains(item.mean)).toBeGreaterThanOrEqual(low! - 1e-9)
          expect(inGrains(item.mean)).toBeLessThanOrEqual(high! + 1e-9)
        },
      ),
    )
  })

  it('knows the cut weight the better, the less comes off, and when its length was read', () => {
    const at = (rawLength?: number) =>
      sd(come({ rawWeight: 380, ...(rawLength === undefined ? {} : { rawLength }) }, 20))
    expect(at(29)).toBeLessThan(at(33))
    expect(at(RAW_IN)).toBeLessThan(at())
  })

  it('is asked about when it is cut and weighs what another of its lot might', () => {
    const [raw, cut] = [404, 404 * (28 / RAW_IN)]
    const asked = (value: number, readings: Partial<Record<DataPoint, number>>) =>
      slipsOf(value, 'gr', { expected: expectedAt('cutWeight', arrowWith(readings), worked.items, SHEET) })
    const own = { rawWeight: raw, rawLength: RAW_IN }
    expect(asked(cut + 0.5, own)).toEqual([])
    expect(asked(cut + 5, own)).toMatchObject([{ code: 'unlike-its-raw' }])
    expect(asked(inGrains(planned.item.mean) + 5, {}), 'of its lot it might be').toEqual([])
    expect(asked(cut + 5, { ...own, cutWeight: cut + 5 }), 'its own reading makes it no righter').toHaveLength(1)
    const offItsLot = inGrains(planned.item.mean) + 40
    expect(asked(offItsLot, { rawWeight: raw, rawLength: 27.9 }), 'shorter raw than cut: its lot alone').toMatchObject([
      { code: 'unlike-the-others' },
    ])
  })

  it('changes nothing where it was not weighed, or is shorter than it is to be cut', () => {
    expect(come({})).toEqual(planned.item)
    expect(come({ rawWeight: 380, rawLength: 27.9 })).toEqual(planned.item)
  })
})
