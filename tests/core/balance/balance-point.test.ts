import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Arrow, Piece } from '@/core/arrow/arrow'
import { balancePoint } from '@/core/balance/balance-point'
import { balanceUncertainty } from '@/core/balance/balance-uncertainty'
import { foc } from '@/core/balance/foc'
import { grains, inches, inGrains, inInches, newtonSquareMetres } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const piece = (name: string, gr: number, from: number, to = from): Piece => ({
  name,
  mass: grains(gr),
  from: inches(from),
  to: inches(to),
})
const arrow = (pieces: readonly Piece[], shaftGr = 290, lengthIn = 29.5, rearIn = 0.5): Arrow => ({
  length: inches(lengthIn),
  shaft: { mass: grains(shaftGr), rear: inches(rearIn), rigidity: newtonSquareMetres(10) },
  pieces,
})
const point = (a: Arrow) => inInches(answer(balancePoint(a)).point)

// 250 gr at 30.5, 100 gr at 28.75, 290 gr at 15.0, 24 gr at 2.5, 10 gr at 0.2, L 29.5 (C).
const WORKED = arrow([
  piece('head', 250, 29.5, 31.5),
  piece('post', 100, 28.75),
  piece('vanes', 24, 1, 4),
  piece('nock', 10, 0.2),
])

describe('balancePoint', () => {
  it('has the worked example: 674 gr, B 22.124629 in, FOC 24.9987 %', () => {
    const { mass, point: at } = answer(balancePoint(WORKED))
    expect(inGrains(mass)).toBeCloseTo(674, 9)
    expect(Math.abs(inInches(at) - 22.124629)).toBeLessThanOrEqual(5e-7)
    expect(Math.abs(100 * answer(foc(at, WORKED.length)) - 24.9987)).toBeLessThanOrEqual(5e-5)
  })

  it('stays in the middle with parts placed the same on either side of it', () => {
    const parts = fc.array(
      fc.record({
        gr: fc.double({ min: 0, max: 300, noNaN: true }),
        from: fc.double({ min: 0, max: 14, noNaN: true }),
      }),
    )
    fc.assert(
      fc.property(parts, (halves) => {
        const mirrored = halves.flatMap(({ gr, from }) => [
          piece('rear', gr, from, from + 1),
          piece('front', gr, 30 - from - 1, 30 - from),
        ])
        expect(point(arrow(mirrored, 300, 30, 0))).toBeCloseTo(15, 9)
      }),
    )
  })

  it('moves forward with weight added ahead of it, and FOC rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        fc.double({ min: 22.2, max: 33, noNaN: true }),
        (gr, at) => {
          const heavier = { ...WORKED, pieces: [...WORKED.pieces, piece('more', gr, at)] }
          expect(point(heavier)).toBeGreaterThan(point(WORKED))
          expect(answer(foc(answer(balancePoint(heavier)).point, WORKED.length))).toBeGreaterThan(0.249_98)
        },
      ),
    )
  })

  it('moves with the whole arrow and does not care for the order of parts', () => {
    const shifted = {
      ...WORKED,
      length: inches(30.5),
      shaft: { ...WORKED.shaft, rear: inches(1.5) },
      pieces: WORKED.pieces
        .map(({ name, mass, from, to }) => piece(name, inGrains(mass), inInches(from) + 1, inInches(to) + 1))
        .toReversed(),
    }
    expect(point(shifted)).toBeCloseTo(point(WORKED) + 1, 9)
  })

  it.each([
    ['arrow length', arrow([], 290, NaN)],
    ['arrow length', arrow([], 290, 80.1)],
    ['shaft rear', arrow([], 290, 29, -25)],
    ['shaft weight', arrow([], -1)],
    ['weight of head', arrow([piece('head', NaN, 30)])],
    ['rear end of head', arrow([piece('head', 1, -25, 0)])],
    ['front end of head', arrow([piece('head', 1, 30, Infinity)])],
    ['arrow weight', arrow([], 0)],
  ])('names a %s it cannot take', (input, wrong) => {
    expect(balancePoint(wrong)).toMatchObject({ ok: false, findings: [{ code: 'outside-model', input }] })
  })

  it('names a part that runs backwards and a shaft without length', () => {
    expect(balancePoint(arrow([piece('head', 1, 31, 30)]))).toMatchObject({
      findings: [{ code: 'part-runs-backwards', part: 'head' }],
    })
    expect(balancePoint(arrow([], 290, 29, 29.1))).toMatchObject({ findings: [{ code: 'shaft-has-no-length' }] })
  })
})

describe('balanceUncertainty', () => {
  const spread = { shaft: grains(1), pieces: [1, 0.4, 0.2, 0.1].map(grains), place: inches(0.02) }

  // Against the change of B itself when each weight and place moves by its uncertainty.
  it('is what the parts’ own errors come to', () => {
    const base = point(WORKED)
    const heavier = (i: number, gr: number) => ({
      ...WORKED,
      pieces: WORKED.pieces.map((p, j) => (i === j ? { ...p, mass: grains(inGrains(p.mass) + gr) } : p)),
    })
    const moved = (i: number) => ({
      ...WORKED,
      pieces: WORKED.pieces.map((p, j) =>
        i === j ? { ...p, from: inches(inInches(p.from) + 0.02), to: inches(inInches(p.to) + 0.02) } : p,
      ),
    })
    const changes = [
      point({ ...WORKED, shaft: { ...WORKED.shaft, mass: grains(291) } }) - base,
      (290 / 674) * 0.02,
      ...[1, 0.4, 0.2, 0.1].flatMap((gr, i) => [point(heavier(i, gr)) - base, point(moved(i)) - base]),
    ]
    const { value, sd, high } = answer(balanceUncertainty(WORKED, spread))
    expect(inInches(value)).toBe(base)
    expect(inInches(sd)).toBeCloseTo(Math.hypot(...changes), 4)
    expect(high - value).toBeCloseTo(1.959_964 * sd, 12)
  })

  it.each([
    ['too few spreads', WORKED, { ...spread, pieces: [] }, { code: 'too-few-values', got: 0, needed: 4 }],
    ['a negative spread', WORKED, { ...spread, shaft: grains(-1) }, { input: 'standard uncertainty of a weight' }],
    ['an endless place', WORKED, { ...spread, place: inches(Infinity) }, { input: 'standard uncertainty of a place' }],
    ['an arrow without weight', arrow([], 0), { ...spread, pieces: [] }, { input: 'arrow weight' }],
  ])('gives nothing for %s', (_, which, given, finding) => {
    expect(balanceUncertainty(which, given)).toMatchObject({ ok: false, findings: [finding] })
  })
})
