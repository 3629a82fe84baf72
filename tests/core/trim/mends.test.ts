import { describe, expect, it } from 'vitest'
import type { Arrow, Piece } from '@/core/arrow/arrow'
import { outsideModel } from '@/core/finding'
import { bounds, known, noAnswer } from '@/core/outcome'
import { grains, inches, inGrains, newtonSquareMetres, type Ratio, ratio } from '@/core/quantity'
import { fixedAfter } from '@/core/trim/fixing-events'
import { type LightState, type MendOption, mends } from '@/core/trim/mends'
import { answer } from '@tests/support/answer'

const piece = (name: string, gr: number, from: number, to = from): Piece => ({
  name,
  mass: grains(gr),
  from: inches(from),
  to: inches(to),
})
const ARROW: Arrow = {
  length: inches(28),
  shaft: { mass: grains(300), rear: inches(0.5), rigidity: newtonSquareMetres(10) },
  pieces: [piece('nock', 10, 0, 0.5), piece('post', 150, 26.5, 28), piece('head', 250, 28, 30)],
}
const OPTIONS: readonly MendOption[] = [
  { kind: 'head', name: 'head of 275', change: { does: 'replace', part: 'head', by: piece('head', 275, 28, 30) } },
  { kind: 'collar', name: 'collar of 12', change: { does: 'add', piece: piece('collar', 12, 27.5, 28) }, ref: 'C12' },
  { kind: 'wrap', name: 'wrap of 8', change: { does: 'add', piece: piece('wrap', 8, 0.5, 4.5) } },
  { kind: 'longer shaft', name: 'half an inch longer', change: { does: 'lengthen', by: inches(0.5) } },
  { kind: 'nock', name: 'lighter nock', change: { does: 'replace', part: 'nock', by: piece('nock', 9, 0, 0.5) } },
]
const light = (short: number, change: Partial<LightState> = {}): LightState => ({
  arrow: ARROW,
  short: grains(short),
  tolerance: grains(1),
  trimmable: grains(40),
  fixed: [],
  ...change,
})
const names = (state: LightState, options = OPTIONS) => answer(mends(state, options)).map(({ option }) => option.name)

describe('mends', () => {
  it('ranks what mends the arrow by smallness', () => {
    expect(names(light(5))).toEqual(['half an inch longer', 'wrap of 8', 'collar of 12', 'head of 275'])
    expect(names(light(9))).toEqual(['wrap of 8', 'collar of 12', 'head of 275'])
  })

  it('takes an arrow that was worked out whole as it is, with the front point it is measured to', () => {
    const becomes: Arrow = { ...ARROW, pieces: [...ARROW.pieces, piece('collar', 12, 27.5, 28)] }
    const whole = (focLength?: number): MendOption => ({
      kind: 'collar',
      name: 'collar of 12',
      change: { does: 'become', arrow: becomes, ...(focLength === undefined ? {} : { focLength: inches(focLength) }) },
    })
    const [added] = answer(mends(light(9), [OPTIONS[1]!]))
    const [same] = answer(mends(light(9), [whole()]))
    expect([same!.gain, same!.foc]).toEqual([added!.gain, added!.foc])
    // FOC = balance/length − 1/2 [F1435]: half an inch more of length under the same balance.
    const [further] = answer(mends({ ...light(9), focLength: inches(28.5) }, [whole(28.5)]))
    expect(further!.foc).toBeCloseTo((added!.foc + 0.5) * (28 / 28.5) - 0.5, 12)
    expect(further!.focChange).toBeCloseTo(added!.focChange * (28 / 28.5), 12)
  })

  it('takes what comes just inside either edge, and nothing just outside', () => {
    const edges = (gr: number) => ({ tolerance: grains(gr), trimmable: grains(0) })
    for (const short of [16, 0]) {
      expect(names(light(short, edges(8.001)), [OPTIONS[2]!])).toEqual(['wrap of 8'])
      expect(mends(light(short, edges(7.999)), [OPTIONS[2]!]).ok).toBe(false)
    }
  })

  it('leaves out what adds more than can be taken off again', () => {
    expect(names(light(9, { trimmable: grains(0) }))).toEqual(['wrap of 8'])
  })

  // Step of the usual route at which each part is final: common practice, no source.
  it.each([
    { step: 2, left: ['half an inch longer', 'wrap of 8', 'collar of 12', 'head of 275'] },
    { step: 3, left: ['wrap of 8', 'collar of 12', 'head of 275'] },
    { step: 8, left: ['collar of 12', 'head of 275'] },
    { step: 14, left: ['head of 275'] },
  ])('offers after step $step only what is still possible', ({ step, left }) => {
    expect(names(light(5, { fixed: fixedAfter(step) }))).toEqual(left)
  })

  it('tells what each does to weight and FOC', () => {
    const [longer, wrap, collar] = answer(mends(light(5), OPTIONS))
    expect(inGrains(wrap!.gain)).toBeCloseTo(8, 9)
    expect(inGrains(wrap!.over)).toBeCloseTo(3, 9)
    expect(wrap!.focChange).toBeLessThan(0)
    expect(collar!.focChange).toBeGreaterThan(0)
    expect(inGrains(longer!.gain)).toBeCloseTo(300 * (0.5 / 27.5), 9)
    expect(collar!.reserve).toBeUndefined()
  })

  it('tells what each does to the reserve, where someone knows it', () => {
    const working = { equation: 'r', inputs: [], result: [], source: ['OWN' as const] }
    const reserveOf = (arrow: Arrow) => known(ratio(1 - arrow.pieces.length / 100), working)
    const collar = answer(mends(light(11), OPTIONS, reserveOf)).find(({ option }) => option.ref === 'C12')!
    expect(collar.reserve).toBeCloseTo(0.96, 12)
    expect(collar.reserveChange).toBeCloseTo(-0.01, 12)
  })

  it('tells a reserve without its change where today’s has no answer', () => {
    const working = { equation: 'r', inputs: [], result: [], source: ['OWN' as const] }
    const reserveOf = (arrow: Arrow) =>
      arrow === ARROW
        ? noAnswer(outsideModel<'ratio'>('reserve', ratio(NaN), bounds<Ratio>(ratio(0), ratio(1)), '1'))
        : known(ratio(0.9), working)
    const [first] = answer(mends(light(11), OPTIONS, reserveOf))
    expect(first!.reserve).toBe(0.9)
    expect(first!.reserveChange).toBeUndefined()
  })

  it('names a part that the arrow does not have, beside the rest', () => {
    const wrong: MendOption = {
      kind: 'insert',
      name: 'next insert',
      change: { does: 'replace', part: 'insert', by: piece('insert', 160, 26.5, 28) },
    }
    const outcome = mends(light(5), [...OPTIONS, wrong])
    expect(outcome.ok).toBe(true)
    expect(outcome.findings).toEqual([{ code: 'no-such-part', part: 'insert', change: 'next insert' }])
  })

  it('leaves out a change that makes no arrow', () => {
    const broken: MendOption = { kind: 'wrap', name: 'broken', change: { does: 'add', piece: piece('wrap', NaN, 1) } }
    expect(names(light(8), [broken, ...OPTIONS])).not.toContain('broken')
  })

  it.each([
    ['nothing is enough', light(500), OPTIONS, { code: 'no-mend' }],
    ['nothing is offered', light(5), [], { code: 'no-mend' }],
    ['everything is final', light(5, { fixed: fixedAfter(18) }), OPTIONS, { code: 'no-mend' }],
    ['what is short is no number', light(NaN), OPTIONS, { input: 'weight short' }],
    ['the tolerance is negative', light(5, { tolerance: grains(-1) }), OPTIONS, { input: 'tolerance' }],
    ['the post can give no number', light(5, { trimmable: grains(NaN) }), OPTIONS, { input: 'what the post can give' }],
    [
      'a shaft would be endless',
      light(5),
      [{ kind: 'longer shaft', name: 'endless', change: { does: 'lengthen', by: inches(Infinity) } }] as const,
      { input: 'longer by' },
    ],
    [
      'the arrow has no length',
      light(5, { arrow: { ...ARROW, length: inches(0) } }),
      OPTIONS,
      { input: 'arrow length' },
    ],
  ])('gives nothing when %s', (_, state, options, finding) => {
    const outcome = mends(state, options)
    expect(outcome.ok).toBe(false)
    expect(outcome.findings[0]).toMatchObject(finding)
  })
})
