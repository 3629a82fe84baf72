import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CUSTOMARY_CLEARANCE as rules } from '@/core/cut/clearance-rules'
import { clearances, type ClearanceInputs } from '@/core/cut/clearances'
import type { FullDraw } from '@/core/cut/full-draw'
import { shortestClear } from '@/core/cut/shortest-clear'
import { vaneReach } from '@/core/cut/vane-reach'
import { degrees, inches, inInches, sum } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const drawn = (rest: number, riser: number, hand?: number): FullDraw => ({
  rest: { at: inches(rest), how: 'marked' },
  riserFront: { at: inches(riser), how: 'marked' },
  ...(hand === undefined ? {} : { hand: { at: inches(hand), how: 'marked' } }),
})
const inch = (found: ReturnType<typeof shortestClear>) => {
  const { length, setBy } = answer(found)
  return [inInches(length), setBy]
}

describe('shortestClear', () => {
  it.each([
    // [CP] front at least 1.0 ahead of the rest, rear of the blades 0.75 ahead of riser and hand; sums by hand
    { at: drawn(26, 26.5), blades: 0.2, length: 27.05, setBy: 'riser front' },
    { at: drawn(26, 26.5), blades: 0.5, length: 27, setBy: 'rest' },
    { at: drawn(26, 26.5), blades: -0.3, length: 27.55, setBy: 'riser front' },
    { at: drawn(26, 26.5, 27.2), blades: 0.2, length: 27.75, setBy: 'hand' },
    { at: drawn(26, 27.5), blades: undefined, length: 27, setBy: 'rest' },
    { at: drawn(26, 27.5, 28), blades: undefined, length: 27, setBy: 'rest' },
  ])('is $length in, by the $setBy', ({ at, blades, length, setBy }) => {
    const found = inch(shortestClear(at, rules, blades === undefined ? undefined : inches(blades)))
    expect(found).toEqual([expect.closeTo(length, 9), setBy])
  })

  it('leaves every clearance kept at that length, and one of them not a hair shorter', () => {
    const place = fc.double({ min: 20, max: 30, noNaN: true })
    fc.assert(
      fc.property(place, place, place, fc.double({ min: -2, max: 2, noNaN: true }), (rest, riser, hand, blades) => {
        const fullDraw = drawn(rest, riser, hand)
        const { length } = answer(shortestClear(fullDraw, rules, inches(blades)))
        const at = (by: number) =>
          clearances({ length: sum(length, inches(by)), fullDraw, rules, bladesAhead: inches(blades) }).findings
        expect(at(1e-9)).toEqual([])
        expect(at(-1e-6).length).toBeGreaterThan(0)
      }),
    )
  })

  it.each([
    [{ ...rules, frontAheadOfRest: inches(-0.1) }, 0, 'shaft front ahead of the rest'],
    [{ ...rules, bladesAheadOfRiser: inches(10.1) }, 0, 'blades ahead of the riser'],
    [{ ...rules, bladesAheadOfRiser: inches(NaN) }, 0, 'blades ahead of the riser'],
    [rules, -5.1, 'blades ahead of the shaft front'],
    [rules, 10.1, 'blades ahead of the shaft front'],
    [rules, NaN, 'blades ahead of the shaft front'],
  ])('takes no rule %j with blades at %d', (own, blades, input) => {
    expect(shortestClear(drawn(26, 27), own, inches(blades))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('clearances', () => {
  const whole: ClearanceInputs = {
    length: inches(28),
    fullDraw: drawn(26.4, 27, 27.4),
    rules,
    bladesAhead: inches(0.3),
    cuttingWidth: inches(1.125),
    toRiserSide: inches(0.85),
    vaneTail: inches(0.9),
    vaneReach: inches(0.6),
    toCable: inches(0.7),
  }

  it('tells each, and which fall short', () => {
    const found = clearances(whole)
    expect(answer(found).map(({ what, has }) => [what, inInches(has)])).toEqual([
      ['shaft front ahead of the rest', expect.closeTo(1.6, 9)],
      ['blades ahead of the riser', expect.closeTo(1.3, 9)],
      ['blades ahead of the hand', expect.closeTo(0.9, 9)],
      ['blades off the riser', expect.closeTo(0.2875, 9)],
      ['vane off the cable', expect.closeTo(0.1, 9)],
      ['vane tail ahead of the throat', expect.closeTo(0.9, 9)],
    ])
    expect(found.findings).toMatchObject([{ code: 'clearance-short', what: 'vane off the cable', needs: inches(0.12) }])
  })

  it('judges only what it is told', () => {
    const bare: ClearanceInputs = { length: inches(28), fullDraw: drawn(26.4, 27), rules }
    expect(answer(clearances(bare)).map(({ what }) => what)).toEqual(['shaft front ahead of the rest'])
    const half = answer(
      clearances({ ...bare, cuttingWidth: inches(1), vaneReach: inches(0.5), bladesAhead: inches(0) }),
    )
    expect(half.map(({ what }) => what)).toEqual(['shaft front ahead of the rest', 'blades ahead of the riser'])
  })

  it('counts what touches below nothing', () => {
    const found = clearances({ ...whole, length: inches(26), toCable: inches(0.5), cuttingWidth: inches(2) })
    expect(found.findings.map((f) => f.code)).toEqual(Array.from({ length: 5 }, () => 'clearance-short'))
    expect(answer(found).filter(({ has }) => has < 0)).toHaveLength(5)
  })

  it.each<[Partial<ClearanceInputs>, string]>([
    [{ length: inches(3.9) }, 'arrow length'],
    [{ length: inches(NaN) }, 'arrow length'],
    [{ rules: { ...rules, vaneTail: inches(-1) } }, 'least clearance'],
    [{ bladesAhead: inches(11) }, 'blades ahead of the shaft front'],
    [{ cuttingWidth: inches(6.1) }, 'cutting width'],
    [{ toRiserSide: inches(-0.1) }, 'arrow to riser'],
    [{ vaneTail: inches(20.1) }, 'vane tail'],
    [{ vaneReach: inches(NaN) }, 'reach of the vane'],
    [{ toCable: inches(10.1) }, 'arrow to cable'],
  ])('takes no %j', (changed, input) => {
    expect(clearances({ ...whole, ...changed })).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('the reach of vanes', () => {
  // By hand: r 0.15 in and h 0.45 in make an edge 0.6 in from the axis.
  const vanes = { count: 3, height: inches(0.45), shaftRadius: inches(0.15), cockVane: degrees(0) }
  const reach = (changed: Partial<typeof vanes>, side?: 'right' | 'left') =>
    inInches(vaneReach({ ...vanes, ...changed }, side))

  it.each([
    ['three, cock vane up', {}, 'right', 0.6 * Math.sin(Math.PI / 3)],
    ['three, cock vane up', {}, 'left', 0.6 * Math.sin(Math.PI / 3)],
    ['three, cock vane out', { cockVane: degrees(90) }, 'right', 0.6],
    ['three, cock vane out, the other side', { cockVane: degrees(90) }, 'left', 0.3],
    ['four, one up', { count: 4 }, 'left', 0.6],
    ['four, between', { count: 4, cockVane: degrees(45) }, 'left', 0.6 * Math.SQRT1_2],
    ['one, up: the shaft itself', { count: 1 }, 'right', 0.15],
  ] as const)('of %s', (_, changed, side, expected) => {
    expect(reach(changed, side)).toBeCloseTo(expected, 12)
  })

  it('is the further one where nobody said on which side the cables run, and never beyond the edge', () => {
    for (let angle = 0; angle <= 360; angle += 7) {
      const turned = { cockVane: degrees(angle) }
      const [right, left] = [reach(turned, 'right'), reach(turned, 'left')]
      expect(reach(turned)).toBeCloseTo(Math.max(right, left), 12)
      expect(Math.max(right, left)).toBeLessThanOrEqual(0.6 + 1e-12)
      expect(Math.min(right, left)).toBeGreaterThanOrEqual(0.15)
    }
  })
})
