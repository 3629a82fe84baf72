import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balanceCheck } from '@/core/balance/balance-check'
import { balanceForFoc } from '@/core/balance/balance-for-foc'
import { foc } from '@/core/balance/foc'
import { focClass } from '@/core/balance/foc-class'
import { measuredFoc } from '@/core/balance/measured-foc'
import { inches, inInches, inPercent, percent, ratio } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const SIXTEENTH = inches(1 / 16)
const readings = (balance: number, length: number) => ({
  balance: { value: inches(balance), step: SIXTEENTH },
  length: { value: inches(length), step: SIXTEENTH },
  frontPoint: 'shaft front' as const,
})

describe('foc', () => {
  // [F1435] (M): L 29.0, B 19.0 → 15.5172 %.
  it('has the worked example', () => {
    expect(Math.abs(inPercent(answer(foc(inches(19), inches(29)))) - 15.5172)).toBeLessThanOrEqual(5e-5)
  })

  it('is undone by the balance point for an FOC', () => {
    const length = fc.double({ min: 5, max: 79, noNaN: true })
    fc.assert(
      fc.property(length, fc.double({ min: -0.4, max: 0.9, noNaN: true }), (l, share) => {
        const point = answer(balanceForFoc(ratio(share), inches(l)))
        expect(answer(foc(point, inches(l)))).toBeCloseTo(share, 10)
      }),
    )
  })

  it.each([
    [NaN, 29, 'balance point'],
    [121, 29, 'balance point'],
    [19, 0, 'arrow length'],
    [19, NaN, 'arrow length'],
    [19, 3.99, 'arrow length'],
    [19, 80.01, 'arrow length'],
  ])('gives nothing for B %d, L %d', (balance, length, input) => {
    expect(foc(inches(balance), inches(length))).toMatchObject({ ok: false, findings: [{ input }] })
  })

  it.each([
    [NaN, 29, 'FOC'],
    [-1.01, 29, 'FOC'],
    [0.2, Infinity, 'arrow length'],
  ])('has no balance point for an FOC of %d at L %d', (share, length, input) => {
    expect(balanceForFoc(ratio(share), inches(length))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('focClass', () => {
  // [ASHBY08]: up to 12 normal, over 12 to 19 high, 19 to 30 extreme, over 30 ultra-extreme.
  it.each([
    [-3, 'normal'],
    [12, 'normal'],
    [12.01, 'high'],
    [19, 'high'],
    [19.01, 'extreme'],
    [30, 'extreme'],
    [30.01, 'ultra-extreme'],
  ])('puts %d %% into its class', (share, name) => {
    expect(answer(focClass(percent(share)))).toBe(name)
  })

  it('has none for what is no number', () => expect(focClass(ratio(NaN)).ok).toBe(false))
})

describe('measuredFoc', () => {
  // B and L each to 1/16 in (u = 0.018042 in) → 15.517 ± 0.074 %, one standard uncertainty (C).
  it('has the worked uncertainty', () => {
    const { value, sd, low, high } = answer(measuredFoc(readings(19, 29)))
    expect(Math.abs(inPercent(value) - 15.517)).toBeLessThanOrEqual(5e-4)
    expect(Math.abs(inPercent(sd) - 0.074)).toBeLessThanOrEqual(5e-4)
    expect(inInches(SIXTEENTH) / Math.sqrt(12)).toBeCloseTo(0.018_042, 6)
    expect(high - low).toBeCloseTo(2 * 1.959_964 * sd, 12)
  })

  // With a 1.2 in head wrongly counted in L → 12.91 %.
  it('takes the head off a length that was read to its tip, and says what it would have given', () => {
    const outcome = measuredFoc({ ...readings(19, 30.2), frontPoint: 'head tip', headAhead: inches(1.2) })
    expect(Math.abs(inPercent(answer(outcome).value) - 15.5172)).toBeLessThanOrEqual(5e-5)
    const [finding] = outcome.findings
    expect(finding).toMatchObject({ code: 'length-to-head-tip', foc: answer(outcome).value })
    expect(
      finding?.code === 'length-to-head-tip' && Math.abs(inPercent(finding.focAsRead) - 12.91),
    ).toBeLessThanOrEqual(0.005)
  })

  it('has no answer to a tip length while the head’s own is unknown', () => {
    const outcome = measuredFoc({ ...readings(19, 30.2), frontPoint: 'head tip' })
    expect(outcome).toMatchObject({ ok: false, findings: [{ code: 'length-to-head-tip' }] })
  })

  it('takes the shoulder of an outsert for the front, and then no head off', () => {
    const outcome = measuredFoc({ ...readings(19, 29), frontPoint: 'outsert shoulder', headAhead: inches(1.2) })
    expect(outcome.findings).toEqual([])
    expect(inPercent(answer(outcome).value)).toBeCloseTo(15.5172, 4)
  })

  it.each([
    ['step of the balance reading', { balance: { value: inches(19), step: inches(0) } }],
    ['step of the length reading', { length: { value: inches(29), step: inches(NaN) } }],
    ['balance point', { balance: { value: inches(NaN), step: SIXTEENTH } }],
    ['head ahead of the shaft', { headAhead: inches(Infinity) }],
    ['arrow length', { frontPoint: 'head tip' as const, headAhead: inches(26) }],
  ])('names a %s it cannot take', (input, change) => {
    expect(measuredFoc({ ...readings(19, 29), ...change })).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('balanceCheck', () => {
  const at = (value: number, sd: number) => ({ value: inches(value), sd: inches(sd) })

  it('lets the two differ by what both may be wrong, and no more', () => {
    expect(balanceCheck(at(20.09, 0.03), at(20, 0.04)).findings).toEqual([])
    expect(balanceCheck(at(20.1, 0.03), at(20, 0.04)).findings).toMatchObject([{ code: 'balance-disagrees' }])
    expect(balanceCheck(at(20, 0), at(20, 0)).findings).toEqual([])
    expect(inInches(answer(balanceCheck(at(19.9, 0.03), at(20, 0.04))))).toBeCloseTo(-0.1, 12)
  })

  it.each([
    ['measured balance point', at(NaN, 0), at(1, 0)],
    ['computed balance point', at(1, 0), at(Infinity, 0)],
    ['uncertainty of the measured', at(1, -1), at(1, 0)],
    ['uncertainty of the computed', at(1, 0), at(1, NaN)],
  ])('names a %s it cannot take', (input, measured, computed) => {
    expect(balanceCheck(measured, computed)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
