import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Arrow } from '@/core/arrow/arrow'
import { bounds, known, type Outcome } from '@/core/outcome'
import { difference, grains, inches, inInches, type Length, poundsForce, ratio } from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { lengthened } from '@/core/stiffness/lengthened'
import { lengthsInBand } from '@/core/stiffness/lengths-in-band'
import { rigidityFromSpine } from '@/core/stiffness/static-spine'
import { answer } from '@tests/support/answer'
import { heavyArrow } from './sample-arrow'

const launch = (lbf: number) => ({ peakDraw: poundsForce(lbf), virtualMass: grains(60) })
const cutTo = (length: Length): Outcome<Arrow> =>
  known(lengthened(heavyArrow, difference(length, heavyArrow.length)), {
    equation: '',
    inputs: [],
    result: [],
    source: ['OWN'],
  })
const ask = (lbf: number, low: number, high: number, from = 20, to = 34, arrowAt = cutTo) =>
  lengthsInBand({
    launch: launch(lbf),
    band: bounds(ratio(low), ratio(high)),
    range: bounds(inches(from), inches(to)),
    arrowAt,
  })

describe('lengthsInBand', () => {
  it('gives the lengths whose reserve is at either end of the band', () => {
    fc.assert(
      fc.property(fc.double({ min: 55, max: 75, noNaN: true }), (lbf) => {
        const { shortest, longest, shortestBy, longestBy } = answer(ask(lbf, 0.7, 1.1, 18, 45))
        expect([shortestBy, longestBy]).toEqual(['reserve', 'reserve'])
        expect(answer(columnReserve(answer(cutTo(longest)), launch(lbf)))).toBeCloseTo(0.7, 6)
        expect(answer(columnReserve(answer(cutTo(shortest)), launch(lbf)))).toBeCloseTo(1.1, 6)
        expect(longest).toBeGreaterThan(shortest)
      }),
      { numRuns: 20 },
    )
  })

  it('shortens as the draw weight grows', () => {
    expect(answer(ask(80, 0.75, 1.3)).longest).toBeLessThan(answer(ask(70, 0.75, 1.3)).longest)
  })

  it('says when the shaft on hand sets an end, not its stiffness', () => {
    expect(answer(ask(72, 0.1, 5, 25, 30))).toEqual({
      shortest: inches(25),
      longest: inches(30),
      shortestBy: 'range',
      longestBy: 'range',
    })
  })

  it('says so when no length is short enough, or none long enough', () => {
    expect(ask(72, 3, 4)).toMatchObject({ ok: false, findings: [{ code: 'no-length-short-enough', wanted: 3 }] })
    expect(ask(72, 0.01, 0.02)).toMatchObject({
      ok: false,
      findings: [{ code: 'no-length-long-enough', wanted: 0.02 }],
    })
  })

  it.each([
    [3.9, 30, { input: 'shortest length looked at' }],
    [NaN, 30, { input: 'shortest length looked at' }],
    [20, 80.1, { input: 'longest length looked at' }],
    [20, NaN, { input: 'longest length looked at' }],
    [30, 29.99, { code: 'range-reversed', shortest: inches(30), longest: inches(29.99) }],
  ])('looks at no lengths from %d to %d in', (from, to, finding) => {
    expect(ask(72, 0.75, 1.3, from, to)).toMatchObject({ ok: false, findings: [finding] })
  })

  it('takes no band that runs backwards', () => {
    expect(ask(72, 1.3, 0.75)).toMatchObject({ ok: false, findings: [{ code: 'band-reversed' }] })
  })

  it.each([
    ['at the shortest', (inch: number) => inch < 20.001],
    ['at the longest', (inch: number) => inch > 33.999],
    ['for the high end', (inch: number) => inch > 20.001 && inch < 26],
    // Both ends are looked for from the middle, 27 in, outwards.
    ['for the low end', (inch: number) => inch > 27.001 && inch < 33.999],
  ])('hands on a refusal of the arrow %s', (_, refuses) => {
    const refused = rigidityFromSpine(inches(-1))
    const arrowAt = (length: Length): Outcome<Arrow> =>
      refuses(inInches(length)) && !refused.ok ? refused : cutTo(length)
    const reserveAt26 = answer(columnReserve(answer(cutTo(inches(26))), launch(72)))
    expect(ask(72, reserveAt26 * 0.7, reserveAt26 * 1.3, 20, 34, arrowAt)).toMatchObject({
      ok: false,
      findings: [{ input: 'static spine' }],
    })
  })
})
