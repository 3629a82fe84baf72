import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { arrowLength, c2cOf } from '@/core/cut/arrow-length'
import { chooseCut, type CutQuestion } from '@/core/cut/choose-cut'
import { inches, inInches } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const question = (changed: Partial<CutQuestion> = {}): CutQuestion => ({
  clear: inches(26.8),
  stiff: { shortest: inches(24), longest: inches(28.33) },
  raw: inches(31.5),
  wish: 'longest',
  step: inches(0.125),
  ...changed,
})
const chosen = (changed: Partial<CutQuestion> = {}) => inInches(answer(chooseCut(question(changed))).c2c)

describe('chooseCut', () => {
  it('takes the step nearest to the wish within the limits', () => {
    expect(chosen({ wish: 'longest' })).toBeCloseTo(28.25, 10)
    expect(chosen({ wish: 'shortest' })).toBeCloseTo(26.875, 10)
    expect(chosen({ wish: inches(27.55) })).toBeCloseTo(27.5, 10)
  })

  it('names what sets either end', () => {
    expect(answer(chooseCut(question()))).toMatchObject({ shortestBy: 'clearance', longestBy: 'stiffness' })
    const other = question({ clear: inches(22), raw: inches(27) })
    expect(answer(chooseCut(other))).toMatchObject({
      shortest: inches(24),
      shortestBy: 'stiffness',
      longest: inches(27),
      longestBy: 'raw shaft',
    })
  })

  it('names clearance, and stiffness, where two limits are alike', () => {
    const alike = question({ clear: inches(24), raw: inches(28.33) })
    expect(answer(chooseCut(alike))).toMatchObject({ shortestBy: 'clearance', longestBy: 'stiffness' })
  })

  it('moves a wish that lies outside and says so', () => {
    const short = chooseCut(question({ wish: inches(25) }))
    expect(short.findings).toMatchObject([{ code: 'cut-wish-moved', wish: inches(25) }])
    expect(inInches(answer(short).c2c)).toBeCloseTo(26.875, 10)
    expect(chooseCut(question({ wish: inches(29) })).findings).toMatchObject([{ code: 'cut-wish-moved' }])
    expect(chooseCut(question({ wish: inches(27) })).findings).toEqual([])
  })

  it('takes the middle when no step lies between', () => {
    expect(chosen({ clear: inches(27.3), stiff: { shortest: inches(20), longest: inches(27.35) } })).toBeCloseTo(
      27.325,
      10,
    )
  })

  it('takes a limit that is a whole step for one', () => {
    expect(chosen({ stiff: { shortest: inches(20), longest: inches(28.25) } })).toBeCloseTo(28.25, 10)
    expect(chosen({ clear: inches(26.75), wish: 'shortest' })).toBeCloseTo(26.75, 10)
  })

  it('names each pair of limits that shuts the other out', () => {
    expect(chooseCut(question({ clear: inches(28.4) }))).toMatchObject({
      ok: false,
      findings: [{ code: 'clearance-against-stiffness' }],
    })
    expect(chooseCut(question({ clear: inches(28), raw: inches(27.9) }))).toMatchObject({
      ok: false,
      findings: [{ code: 'clearance-against-raw-shaft' }],
    })
    expect(chooseCut(question({ raw: inches(23.9), clear: inches(20) }))).toMatchObject({
      ok: false,
      findings: [{ code: 'stiffness-against-raw-shaft' }],
    })
    expect(chooseCut(question({ clear: inches(33) })).findings.map((f) => f.code)).toEqual([
      'clearance-against-stiffness',
      'clearance-against-raw-shaft',
    ])
    expect(chooseCut(question({ stiff: { shortest: inches(28), longest: inches(27) } }))).toMatchObject({
      ok: false,
      findings: [{ code: 'range-reversed' }],
    })
  })

  it('always lies within every limit, or says why not', () => {
    const any = fc.integer({ min: 10_000, max: 40_000 }).map((thousandths) => thousandths / 1000)
    fc.assert(
      fc.property(any, any, any, any, any, fc.constantFrom(0.05, 0.125, 0.0625, 1), (clear, a, b, raw, wish, step) => {
        const [shortest, longest] = [Math.min(a, b), Math.max(a, b)]
        const found = chooseCut({
          clear: inches(clear),
          stiff: { shortest: inches(shortest), longest: inches(longest) },
          raw: inches(raw),
          wish: inches(wish),
          step: inches(step),
        })
        const fits = Math.max(clear, shortest) <= Math.min(longest, raw)
        expect(found.ok).toBe(fits)
        const c2c = found.ok ? inInches(found.value.c2c) : clear
        expect(!found.ok || (c2c >= Math.max(clear, shortest) - 1e-9 && c2c <= Math.min(longest, raw) + 1e-9)).toBe(
          true,
        )
      }),
    )
  })

  it.each<[Partial<CutQuestion>, string]>([
    [{ clear: inches(-0.1) }, 'shortest clear cut'],
    [{ clear: inches(NaN) }, 'shortest clear cut'],
    [{ stiff: { shortest: inches(NaN), longest: inches(28) } }, 'shortest stiff cut'],
    [{ stiff: { shortest: inches(20), longest: inches(80.1) } }, 'longest stiff cut'],
    [{ raw: inches(Infinity) }, 'raw shaft'],
    [{ wish: inches(NaN) }, 'wished cut'],
    [{ step: inches(0) }, 'step of the saw stop'],
    [{ step: inches(2.1) }, 'step of the saw stop'],
  ])('takes no %j', (changed, input) => {
    expect(chooseCut(question(changed))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('arrowLength', () => {
  it('adds the nock’s standout and a shoulder to the cut, and c2cOf takes them off again', () => {
    const ends = { nockStandout: inches(0.55), shoulder: inches(0.25) }
    expect(inInches(arrowLength(inches(27.5), ends))).toBeCloseTo(28.3, 10)
    expect(inInches(c2cOf(arrowLength(inches(27.5), ends), ends))).toBeCloseTo(27.5, 10)
  })
})
