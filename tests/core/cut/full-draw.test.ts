import { describe, expect, it } from 'vitest'
import { fullDraw } from '@/core/cut/full-draw'
import { inches, inInches } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const marks = { rest: inches(25.6), 'riser front': inches(26.9) }
const aheadOfPivot = { rest: inches(0.5), 'riser front': inches(1.75) }

describe('fullDraw', () => {
  it('takes the marks of a nocked arrow as they are', () => {
    expect(fullDraw({ marks, aheadOfPivot: {} })).toMatchObject({
      ok: true,
      value: { rest: { at: marks.rest, how: 'marked' }, riserFront: { at: marks['riser front'], how: 'marked' } },
      findings: [],
    })
  })

  it('puts the pivot 1¾ in short of the draw length, and says it is estimated', () => {
    // [F1880] draw length is string to grip pivot plus 1¾ in: 28.5 − 1.75 = 26.75
    const found = fullDraw({ marks: {}, drawLength: inches(28.5), aheadOfPivot })
    expect(inInches(answer(found).rest.at)).toBeCloseTo(27.25, 10)
    expect(inInches(answer(found).riserFront.at)).toBeCloseTo(28.5, 10)
    expect(found.findings).toMatchObject([
      { code: 'full-draw-estimated', what: 'rest' },
      { code: 'full-draw-estimated', what: 'riser front' },
    ])
  })

  it('mixes a mark with an estimate and says which is which', () => {
    const found = fullDraw({ marks: { rest: inches(27) }, drawLength: inches(28.5), aheadOfPivot })
    expect(answer(found)).toMatchObject({ rest: { how: 'marked' }, riserFront: { how: 'estimated' } })
    expect(found.findings).toMatchObject([{ what: 'riser front' }])
  })

  it('knows a hand only when told of one', () => {
    expect(answer(fullDraw({ marks, aheadOfPivot: {} })).hand).toBeUndefined()
    expect(answer(fullDraw({ marks: { ...marks, hand: inches(27.5) }, aheadOfPivot: {} })).hand?.how).toBe('marked')
    const told = { marks, drawLength: inches(28.5), aheadOfPivot: { hand: inches(2) } }
    expect(inInches(answer(fullDraw(told)).hand!.at)).toBeCloseTo(28.75, 10)
  })

  it('asks about a mark that the draw length contradicts', () => {
    const at = (rest: number) =>
      fullDraw({
        marks: { ...marks, rest: inches(rest) },
        drawLength: inches(28.5),
        aheadOfPivot: { rest: inches(0.5) },
      })
    expect(at(26.2).findings).toMatchObject([{ code: 'mark-against-draw-length', what: 'rest', marked: inches(26.2) }])
    expect(at(28.3).findings).toMatchObject([{ code: 'mark-against-draw-length' }])
    expect(at(26.3).findings).toEqual([])
  })

  it.each([
    [{ marks: {}, aheadOfPivot }, ['rest', 'riser front']],
    [{ marks: {}, drawLength: inches(28), aheadOfPivot: { rest: inches(1) } }, ['riser front']],
    [{ marks: { 'riser front': inches(27) }, drawLength: inches(28), aheadOfPivot: {} }, ['rest']],
  ])('says what is missing of %j', (told, missing) => {
    expect(fullDraw(told)).toMatchObject({ ok: false, findings: [{ code: 'full-draw-not-known', missing }] })
  })

  it.each([
    [{ marks: { ...marks, rest: inches(4.99) }, aheadOfPivot: {} }, 'mark at the rest'],
    [{ marks: { ...marks, rest: inches(50.01) }, aheadOfPivot: {} }, 'mark at the rest'],
    [{ marks: { ...marks, hand: inches(NaN) }, aheadOfPivot: {} }, 'mark at the hand'],
    [{ marks, aheadOfPivot: { rest: inches(-10.01) } }, 'rest ahead of the pivot'],
    [{ marks, aheadOfPivot: { 'riser front': inches(10.01) } }, 'riser front ahead of the pivot'],
    [{ marks, drawLength: inches(9.9), aheadOfPivot: {} }, 'draw length'],
    [{ marks, drawLength: inches(NaN), aheadOfPivot: {} }, 'draw length'],
  ])('takes no such place: %j', (told, input) => {
    expect(fullDraw(told)).toMatchObject({ ok: false, findings: [{ code: 'outside-model', input }] })
  })

  it('shows the draw length and the marks it went by', () => {
    const found = fullDraw({ marks, drawLength: inches(27), aheadOfPivot: { rest: inches(0.5) } })
    expect(found.ok && found.derivation.inputs.map(({ name }) => name)).toEqual([
      'draw length',
      'mark at the rest',
      'mark at the riser front',
      'rest ahead of the pivot',
    ])
  })
})
