import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degrees, inches, inInches, inUnit } from '@/core/quantity'
import { insertTurn } from '@/core/runout/insert-turn'
import { answer } from '@tests/support/answer'

const at = (tir: number, angle: number) => ({ tir: inches(tir), angle: degrees(angle) })
const turnOf = (shaft: ReturnType<typeof at>, insert: ReturnType<typeof at>, places?: number) => {
  const { turn, remaining } = answer(insertTurn(shaft, insert, places))
  return { turn: inUnit(turn, '°'), tir: inInches(remaining.tir), angle: inUnit(remaining.angle, '°') }
}
const anyRunOut = fc.record({
  tir: fc.double({ min: 0.0001, max: 0.02, noNaN: true }),
  angle: fc.double({ min: -360, max: 360, noNaN: true }),
})

describe('insertTurn', () => {
  it.each([
    // Sums of vectors, by hand: opposite lie against each other, at a right angle by Pythagoras
    { shaft: at(0.006, 0), insert: at(0.004, 0), turn: 180, tir: 0.002, angle: 0 },
    { shaft: at(0.006, 90), insert: at(0.004, 270), turn: 0, tir: 0.002, angle: 90 },
    { shaft: at(0.003, 350), insert: at(0.005, 10), turn: 160, tir: 0.002, angle: 170 },
    { shaft: at(0.004, 30), insert: at(0.004, 60), turn: 150, tir: 0, angle: undefined },
    { shaft: at(0.003, 0), insert: at(0.004, 90), places: 1, turn: 0, tir: 0.005, angle: 53.130_102 },
    {
      shaft: at(0.006, 0),
      insert: at(0.004, 0),
      places: 3,
      turn: [120, 240],
      tir: Math.sqrt(28) / 1000,
      angle: undefined,
    },
  ])('turns $insert against $shaft', ({ shaft, insert, places, turn, tir, angle }) => {
    const found = turnOf(shaft, insert, places)
    expect(found.tir).toBeCloseTo(tir, 12)
    if (Array.isArray(turn)) expect(turn.some((t) => Math.abs(t - found.turn) < 1e-9)).toBe(true)
    else expect(found.turn).toBeCloseTo(turn, 9)
    if (angle !== undefined) expect(found.angle).toBeCloseTo(angle, 5)
  })

  it('leaves the difference of the two, and never more than they were', () => {
    fc.assert(
      fc.property(anyRunOut, anyRunOut, (shaft, insert) => {
        const found = turnOf(at(shaft.tir, shaft.angle), at(insert.tir, insert.angle))
        expect(found.tir).toBeCloseTo(Math.abs(shaft.tir - insert.tir), 12)
        expect(found.turn).toBeGreaterThanOrEqual(0)
        expect(found.turn).toBeLessThanOrEqual(360)
      }),
    )
  })

  it('takes the best of the places there are', () => {
    fc.assert(
      fc.property(anyRunOut, anyRunOut, fc.integer({ min: 1, max: 12 }), (shaft, insert, places) => {
        const found = turnOf(at(shaft.tir, shaft.angle), at(insert.tir, insert.angle), places)
        const all = Array.from({ length: places }, (_, i) => {
          const angle = ((insert.angle + (360 * i) / places) * Math.PI) / 180
          const own = (shaft.angle * Math.PI) / 180
          return Math.hypot(
            shaft.tir * Math.cos(own) + insert.tir * Math.cos(angle),
            shaft.tir * Math.sin(own) + insert.tir * Math.sin(angle),
          )
        })
        expect(found.tir).toBeCloseTo(Math.min(...all), 10)
      }),
    )
  })

  it.each([
    [at(-0.001, 0), at(0.001, 0), undefined, { input: 'run-out of the shaft' }],
    [at(0.001, 361), at(0.001, 0), undefined, { input: 'angle of the shaft' }],
    [at(0.001, 0), at(0.51, 0), undefined, { input: 'run-out of the insert' }],
    [at(0.001, 0), at(0.001, NaN), undefined, { input: 'angle of the insert' }],
    [at(0.001, 0), at(0.001, 0), 0, { input: 'places to turn to' }],
    [at(0.001, 0), at(0.001, 0), 3601, { input: 'places to turn to' }],
    [at(0.001, 0), at(0.001, 0), NaN, { input: 'places to turn to' }],
    [at(0.001, 0), at(0.001, 0), 2.5, { code: 'places-not-whole', places: 2.5 }],
  ])('gives no turn for %j, %j in %d places', (shaft, insert, places, finding) => {
    expect(insertTurn(shaft, insert, places)).toMatchObject({ ok: false, findings: [finding] })
  })
})
