import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { envelope, type EnvelopeQuestion } from '@/core/envelope/envelope'
import { bandMargins, type Margin } from '@/core/envelope/margin'
import { outsideModel } from '@/core/finding'
import { bounds, known, noAnswer, type Outcome } from '@/core/outcome'
import { type Force, grains, inPoundsForce, poundsForce, ratio, scaled, sum } from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { answer } from '@tests/support/answer'
import { heavyArrow } from '../stiffness/sample-arrow'

type Ask = EnvelopeQuestion<'force', string>
const margins = (list: readonly Margin[]): Outcome<readonly Margin[]> =>
  known(list, { equation: '', inputs: [], result: [], source: ['OWN'] })
const refused = noAnswer(outsideModel('reserve', ratio(0), bounds(ratio(1), ratio(2)), '1'))
const ask = (evaluate: (lbf: number) => Outcome<readonly Margin[]>, changed: Partial<Ask> = {}): Ask => ({
  what: 'draw weight',
  unit: 'lbf',
  furthestDown: poundsForce(20),
  furthestUp: poundsForce(20),
  evaluate: (change) => evaluate(inPoundsForce(change)),
  ...changed,
})
const straight = (...limits: (readonly [limit: string, at: number])[]) =>
  ask((lbf) => margins(limits.map(([limit, at]) => ({ limit, margin: at > 0 ? at - lbf : lbf - at }))))

describe('envelope', () => {
  it('stops at the nearest limit on either side and names it', () => {
    const found = answer(
      envelope(straight(['reserve', 3.7], ['grains per pound', 6], ['too stiff', -8.25], ['rule', -9])),
    )
    expect(inPoundsForce(found.up.change)).toBeCloseTo(3.7, 5)
    expect(found.up.end).toEqual({ kind: 'limit', limit: 'reserve' })
    expect(inPoundsForce(found.down.change)).toBeCloseTo(-8.25, 5)
    expect(found.down.end).toEqual({ kind: 'limit', limit: 'too stiff' })
  })

  it('never steps over any limit on the way', () => {
    const limit = fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.double({ min: 0.001, max: 30, noNaN: true }))
    fc.assert(
      fc.property(fc.array(limit, { minLength: 1, maxLength: 4 }), (limits) => {
        const { up, down } = answer(envelope(straight(...limits)))
        const nearest = Math.min(...limits.map(([, at]) => at))
        expect(inPoundsForce(up.change)).toBeCloseTo(Math.min(20, nearest), 5)
        expect(up.end.kind).toBe(nearest < 20 ? 'limit' : 'open')
        expect(down.end).toEqual({ kind: 'open' })
      }),
    )
  })

  it('stops where a limit is first left, though it is met again further out', () => {
    const found = answer(envelope(ask((lbf) => margins([{ limit: 'window', margin: Math.abs(lbf - 7) - 2 }]))))
    expect(inPoundsForce(found.up.change)).toBeCloseTo(5, 5)
  })

  it('is open where nothing is reached as far as it looks', () => {
    const found = answer(envelope(straight(['far', 500])))
    expect(found.up).toEqual({ change: poundsForce(20), end: { kind: 'open' } })
    expect(found.down.change).toBeCloseTo(poundsForce(-20), 12)
  })

  it('counts a margin of nothing as inside', () => {
    const found = answer(envelope(ask((lbf) => margins([{ limit: 'edge', margin: -Math.max(0, lbf) }]))))
    expect(inPoundsForce(found.up.change)).toBeCloseTo(0, 5)
    expect(found.up.end).toMatchObject({ limit: 'edge' })
    const onIt = answer(envelope(ask(() => margins([{ limit: 'edge', margin: 0 }]))))
    expect([onIt.down.end, onIt.up.end]).toEqual([{ kind: 'open' }, { kind: 'open' }])
  })

  it('says where the figures end', () => {
    const refusing = envelope(ask((lbf) => (lbf > 4 ? refused : margins([{ limit: 'x', margin: 1 }]))))
    expect(answer(refusing).up.end).toEqual({ kind: 'not known' })
    expect(inPoundsForce(answer(refusing).up.change)).toBeCloseTo(4, 5)
    expect(refusing.findings).toMatchObject([{ code: 'envelope-not-known-past', what: 'draw weight', unit: 'lbf' }])
    const silent = envelope(ask((lbf) => margins([{ limit: 'x', margin: lbf < -3 ? NaN : 1 }])))
    expect(silent.findings).toMatchObject([{ code: 'envelope-not-known-past', change: expect.closeTo(-3, 6) }])
  })

  it('names every limit that is broken before anything changes', () => {
    const evaluate = () =>
      margins([
        { limit: 'reserve', margin: -0.1 },
        { limit: 'clearance', margin: 0.2 },
        { limit: 'rule', margin: NaN },
      ])
    expect(envelope(ask(evaluate))).toMatchObject({
      ok: false,
      findings: [{ code: 'envelope-already-left', limits: ['reserve', 'rule'] }],
    })
  })

  it('hands on a refusal of the arrow as it is', () => {
    expect(envelope(ask(() => refused))).toBe(refused)
  })

  it.each([-1, NaN, Infinity])('does not look as far as %d', (reach) => {
    for (const changed of [{ furthestDown: poundsForce(reach) }, { furthestUp: poundsForce(reach) }]) {
      expect(envelope(ask(() => margins([]), changed))).toMatchObject({
        ok: false,
        findings: [{ code: 'envelope-reach', what: 'draw weight' }],
      })
    }
  })

  it('finds for a real arrow the draw weight at which its reserve leaves the band', () => {
    const at = poundsForce(80)
    const band = bounds(ratio(0.75), ratio(1.3))
    const reserveAt = (change: Force) =>
      columnReserve(heavyArrow, { peakDraw: sum(at, change), virtualMass: grains(60) })
    const found = envelope({
      what: 'draw weight',
      unit: 'lbf',
      furthestDown: poundsForce(40),
      furthestUp: poundsForce(40),
      evaluate: (change) => {
        const reserve = reserveAt(change)
        return reserve.ok ? { ...reserve, value: bandMargins(reserve.value, band, 'too soft', 'too stiff') } : reserve
      },
    })
    const { up, down } = answer(found)
    expect([down.end, up.end]).toEqual([
      { kind: 'limit', limit: 'too stiff' },
      { kind: 'limit', limit: 'too soft' },
    ])
    // The reserve goes with the inverse of the draw weight, so both ends follow from the reserve as it is [OWN]
    const now = answer(reserveAt(scaled(at, 0)))
    expect(sum(at, up.change) / at).toBeCloseTo(now / 0.75, 5)
    expect(sum(at, down.change) / at).toBeCloseTo(now / 1.3, 5)
    expect(found.ok && found.derivation.note).toBe('Reached first: below, too stiff; above, too soft.')
  })

  it('says in its working when a side is open or not known', () => {
    const found = envelope(ask((lbf) => (lbf > 4 ? refused : margins([]))))
    expect(found.ok && found.derivation.note).toBe(
      'Reached first: below, nothing as far as was looked; above, where no figure is known.',
    )
  })
})
