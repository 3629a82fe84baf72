import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cureProgress, type Spell } from '@/core/cure/cure-progress'
import { cureTimes } from '@/core/cure/cure-times'
import { SLOW_EPOXY } from '@/core/cure/glue'
import { celsius, hours, inUnit, kelvins } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const times = (c: number, alreadyH = 0) => {
  const { handle, shoot, full } = answer(cureTimes(SLOW_EPOXY, celsius(c), hours(alreadyH)))
  return [handle, shoot, full].map((time) => +inUnit(time, 'h').toFixed(6))
}
const spell = (c: number, h: number): Spell => ({ temperature: celsius(c), lasted: hours(h) })

describe('cureTimes', () => {
  // Common practice, no source: slow epoxy at 22 °C handles after 12 h, shoots after 24 h, is fully cured after 7 days.
  it('is what the pack says at its own temperature', () => expect(times(22)).toEqual([12, 24, 168]))

  // Common practice, no source: ten degrees more about halve it.
  it('halves ten degrees warmer and doubles ten degrees colder', () => {
    expect(times(32)).toEqual([6, 12, 84])
    const cold = { ...SLOW_EPOXY, least: celsius(5) }
    expect(inUnit(answer(cureTimes(cold, celsius(12))).shoot, 'h')).toBeCloseTo(48, 9)
  })

  it('takes off the cure already behind it, and never goes below nothing', () => {
    expect(times(22, 18)).toEqual([0, 6, 150])
    expect(times(32, 18)).toEqual([0, 3, 75])
  })

  it('falls with temperature over the whole range', () => {
    fc.assert(
      fc.property(fc.double({ min: 13.01, max: 44.98, noNaN: true }), (c) => {
        expect(times(c + 0.01)[2]!).toBeLessThan(times(c)[2]!)
      }),
    )
  })

  it('never cures below 13 °C nor above 45, and does just inside', () => {
    expect(cureTimes(SLOW_EPOXY, celsius(12.99))).toMatchObject({ ok: false, findings: [{ code: 'too-cold-to-cure' }] })
    expect(cureTimes(SLOW_EPOXY, celsius(45.01))).toMatchObject({ ok: false, findings: [{ code: 'too-hot-to-cure' }] })
    expect(cureTimes(SLOW_EPOXY, celsius(13)).ok).toBe(true)
    expect(cureTimes(SLOW_EPOXY, celsius(45)).ok).toBe(true)
  })

  it.each([
    ['time to handle', { handle: hours(0) }, 22],
    ['time to shoot', { shoot: hours(NaN) }, 22],
    ['time to full cure', { full: hours(Infinity) }, 22],
    ['temperature of the stated times', { at: kelvins(NaN) }, 22],
    ['lowest curing temperature', { least: celsius(-61) }, 22],
    ['highest curing temperature', { most: celsius(201) }, 22],
    ['temperature', {}, NaN],
    ['temperature', {}, Infinity],
  ])('names a %s it cannot take', (input, change, c) => {
    const outcome = cureTimes({ ...SLOW_EPOXY, ...change }, celsius(c))
    expect(outcome.ok).toBe(false)
    expect(outcome.findings[0]).toMatchObject({ code: 'outside-model', input })
  })

  it('names a cure behind it that is no time, and times out of order', () => {
    expect(cureTimes(SLOW_EPOXY, celsius(22), hours(-1))).toMatchObject({ findings: [{ input: 'cure so far' }] })
    const sudden = { ...SLOW_EPOXY, handle: hours(24), full: hours(24) }
    expect(cureTimes(sudden, celsius(22)).ok).toBe(true)
    for (const change of [{ handle: hours(25) }, { full: hours(23) }]) {
      expect(cureTimes({ ...SLOW_EPOXY, ...change }, celsius(22))).toMatchObject({
        ok: false,
        findings: [{ code: 'cure-times-reversed' }],
      })
    }
  })
})

describe('cureProgress', () => {
  it('adds warm days and cold nights', () => {
    const { equivalent, handle, shoot, full } = answer(
      cureProgress(SLOW_EPOXY, [spell(22, 6), spell(32, 3), spell(17, 8)]),
    )
    const expected = 6 + 6 + 8 / Math.SQRT2
    expect(inUnit(equivalent, 'h')).toBeCloseTo(expected, 9)
    expect(handle).toBeCloseTo(expected / 12, 9)
    expect(shoot).toBeCloseTo(expected / 24, 9)
    expect(full).toBeCloseTo(expected / 168, 9)
  })

  it('is ready just when the times say so', () => {
    const { shoot } = answer(cureTimes(SLOW_EPOXY, celsius(27)))
    expect(answer(cureProgress(SLOW_EPOXY, [{ temperature: celsius(27), lasted: shoot }])).shoot).toBeCloseTo(1, 12)
  })

  it('counts nothing of a spell too cold or too hot, and says so', () => {
    const outcome = cureProgress(SLOW_EPOXY, [spell(22, 5), spell(12, 100), spell(50, 100)])
    expect(inUnit(answer(outcome).equivalent, 'h')).toBeCloseTo(5, 9)
    expect(outcome.findings).toMatchObject([{ code: 'too-cold-to-cure' }, { code: 'too-hot-to-cure' }])
  })

  it('has come nowhere without a spell', () => expect(answer(cureProgress(SLOW_EPOXY, [])).equivalent).toBe(0))

  it.each([
    ['temperature of a spell', spell(NaN, 1)],
    ['length of a spell', spell(22, -1)],
    ['length of a spell', spell(22, Infinity)],
  ])('names a %s it cannot take', (input, wrong) => {
    expect(cureProgress(SLOW_EPOXY, [wrong])).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
