import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degrees, inches, inDegrees, inInches } from '@/core/quantity'
import { insertTurn } from '@/core/runout/insert-turn'
import type { Bench, BenchArrow } from '@/domain/bench/bench'
import type { DataPoint } from '@/domain/bench/data-points'
import {
  insertShare,
  SPIN_STATIONS,
  stationPoints,
  stationRead,
  windowOf,
  windowsToCut,
} from '@/domain/bench/spun-shaft'
import { answer } from '@tests/support/answer'
import { demoSheet } from '@tests/support/demo-sheet'
import { testId } from '@tests/support/test-id'

const SHEET = demoSheet({ targetGr: 795, c2cIn: 28, quantity: 1 }) // a raw shaft of 32 in: 4 in to come off

function spun(tir: readonly number[], angle: readonly (number | undefined)[]): BenchArrow {
  const kept = (point: DataPoint, value: number) => ({
    event: `${point}`,
    by: 'Ilse',
    step: 'spin',
    withdrawn: null,
    reading: {
      point,
      value,
      unit: point.includes('Angle') ? ('°' as const) : ('in' as const),
      raw: `${value}`,
      source: 'typed' as const,
      stable: true,
      attempt: 1,
      scale: '',
      takenAt: '2026-01-01T00:00:00.000Z',
    },
  })
  const readings = SPIN_STATIONS.flatMap((station, i) => {
    const points = stationPoints(station)
    const at = angle[i]
    const out = tir[i]
    return [
      ...(out === undefined ? [] : [kept(points.tir, out)]),
      ...(at === undefined ? [] : [kept(points.angle, at)]),
    ]
  })
  return { id: testId(1), no: 1, code: 'T/1', state: 'building', readings, confirmed: [], fitted: [] }
}

describe('a shaft that was spun', () => {
  it('says nothing before a station is read', () => {
    expect(windowOf(spun([], []), SHEET)).toBeUndefined()
    expect(stationRead(spun([0.002], []), 1)).toBeUndefined()
  })

  it('needs no angle where nothing runs out', () => {
    expect(inInches(stationRead(spun([0], []), 1)!.tir)).toBe(0)
  })

  it('cuts equal ends off a shaft that is straight', () => {
    const { window } = answer(windowOf(spun([0, 0, 0, 0, 0], []), SHEET)!)
    expect(inInches(window.offNock)).toBeCloseTo(2, 9)
    expect(inInches(window.offPoint)).toBeCloseTo(2, 9)
  })

  it('takes the bent end off a shaft that is bent near one end', () => {
    const nock = answer(windowOf(spun([0.006, 0.002, 0, 0, 0], [90, 90, 0, 0, 0]), SHEET)!)
    expect(inInches(nock.window.offNock)).toBeGreaterThan(2.5)
    expect(nock.window.runOut.tir).toBeLessThan(nock.equal.runOut.tir)
    const point = answer(windowOf(spun([0, 0, 0, 0.002, 0.006], [0, 0, 0, 90, 90]), SHEET)!)
    expect(inInches(point.window.offPoint)).toBeCloseTo(inInches(nock.window.offNock), 6)
  })

  it('takes off both ends together what the raw shaft has over C2C, whatever was read', () => {
    const out = fc.array(fc.double({ min: 0, max: 0.02, noNaN: true }), { minLength: 5, maxLength: 5 })
    const turns = fc.array(fc.integer({ min: 0, max: 359 }), { minLength: 5, maxLength: 5 })
    fc.assert(
      fc.property(out, turns, (tir, angle) => {
        const { window, equal } = answer(windowOf(spun(tir, angle), SHEET)!)
        expect(inInches(window.offNock) + inInches(window.offPoint)).toBeCloseTo(4, 9)
        expect(window.runOut.tir).toBeLessThanOrEqual(equal.runOut.tir + inches(0.0005))
      }),
    )
  })
})

describe('the windows to cut', () => {
  const shaft = spun([0.006, 0.002, 0, 0, 0], [90, 90, 0, 0, 0])
  const set = (...arrows: readonly BenchArrow[]) => ({ arrows }) as unknown as Bench

  it('are those of shafts that were spun and still stand uncut, at the C2C of the sheet', () => {
    const unspun = { ...spun([], []), id: testId(2), no: 2 }
    const [found, ...more] = windowsToCut(set(shaft, unspun), SHEET)
    expect(more).toEqual([])
    expect(found!.arrow.no).toBe(1)
    expect(answer(found!.window)).toEqual(answer(windowOf(shaft, SHEET)!))
    const longer = { ...SHEET, plan: { ...SHEET.plan, c2cIn: 30 } }
    const { window } = answer(windowsToCut(set(shaft), longer)[0]!.window)
    expect(inInches(window.offNock) + inInches(window.offPoint)).toBeCloseTo(2, 9)
  })

  it('leave out what is cut, and what is no longer built', () => {
    const [first] = shaft.readings
    const cut = { ...first!, reading: { ...first!.reading, point: 'c2c' as const, value: 28 } }
    expect(windowsToCut(set({ ...shaft, readings: [...shaft.readings, cut] }), SHEET)).toEqual([])
    expect(windowsToCut(set({ ...shaft, state: 'scrapped' }), SHEET)).toEqual([])
  })
})

describe('the turn of an insert', () => {
  it('cancels an insert against a shaft that run out alike', () => {
    const shaft = { tir: inches(0.004), angle: degrees(30) }
    const whole = { tir: inches(0.008), angle: degrees(30) } // the insert adds as much the same way
    const share = insertShare(whole, shaft)
    expect(inInches(share.tir)).toBeCloseTo(0.004, 12)
    expect(inDegrees(share.angle)).toBeCloseTo(30, 9)
    const { turn, remaining } = answer(insertTurn(shaft, share))
    expect(inDegrees(turn)).toBeCloseTo(180, 9)
    expect(inInches(remaining.tir)).toBeCloseTo(0, 12)
  })
})
