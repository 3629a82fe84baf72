import { describe, expect, it } from 'vitest'
import { implications } from '@/domain/call/implications'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { EMPTY_SHELF } from '@/domain/stock/shelf'
import { stockedShelf } from './stocked-shelf'
import { told, TODAY } from './told-call'

type Told = Parameters<typeof told>[0]
const found = (answers: Told, shelf = EMPTY_SHELF) =>
  implications(told(answers), DEFAULT_RULES, shelf, TODAY).contradictions.map(({ code }) => code)

const bow: Told = { bowKind: 'compound', peakDrawWeightLb: 70, drawLengthIn: 29, restAheadOfPivotIn: 0.5 }

/** Each with answers just far enough apart, and answers that still agree. */
const CASES: readonly (readonly [string, Told, Told])[] = [
  ['marks against draw length', { ...bow, markAtRestIn: 28.3 }, { ...bow, markAtRestIn: 28.2 }],
  ['present arrow short', { ...bow, presentLengthIn: 28.1 }, { ...bow, presentLengthIn: 28.3 }],
  ['present arrow long', { ...bow, presentLengthIn: 33 }, { ...bow, presentLengthIn: 31 }],
  [
    'riser marks disagree',
    { ...bow, riserFrontAheadOfPivotIn: 1.75, markAtRestIn: 27.75, markAtRiserIn: 30 },
    { ...bow, riserFrontAheadOfPivotIn: 1.75, markAtRestIn: 27.75, markAtRiserIn: 29.2 },
  ],
  ['module against draw length', { ...bow, moduleMark: '28' }, { ...bow, moduleMark: '29' }],
  [
    'draw weight off label',
    { peakDrawWeightLb: 74, labelDrawWeightLb: 70 },
    { peakDrawWeightLb: 73, labelDrawWeightLb: 70 },
  ],
  [
    'rating against chronograph',
    { ...bow, ratedSpeedFps: 335, chronograph: [[450, 240]] },
    { ...bow, ratedSpeedFps: 335, chronograph: [[450, 284]] },
  ],
  [
    'heavier is faster',
    {
      chronograph: [
        [450, 260],
        [600, 265],
      ],
    },
    {
      chronograph: [
        [450, 260],
        [600, 235],
      ],
    },
  ],
  ['arrives too late', { travelOn: '2026-12-07' }, { travelOn: '2026-12-08' }],
  ['travel is past', { travelOn: '2026-11-22' }, { travelOn: '2026-12-23' }],
  ['bevel against fletch', { bevelHand: 'left', fletchSide: 'right' }, { bevelHand: 'right', fletchSide: 'right' }],
  ['wish under the guide', { wishWeightGr: 800, guideLeastGr: 850 }, { wishWeightGr: 850, guideLeastGr: 850 }],
  ['wish under the floor', { wishWeightGr: 349, peakDrawWeightLb: 70 }, { wishWeightGr: 350, peakDrawWeightLb: 70 }],
  [
    'speed out of reach',
    { ...bow, wishWeightGr: 900, wishSpeedFps: 280 },
    { ...bow, wishWeightGr: 900, wishSpeedFps: 205 },
  ],
  [
    'head heavier than the front',
    { ...bow, wishWeightGr: 650, headWeightGr: 400 },
    { ...bow, wishWeightGr: 650, headWeightGr: 150 },
  ],
  [
    'present front too heavy',
    { presentWeightGr: 400, presentFrontGr: 400 },
    { presentWeightGr: 400, presentFrontGr: 150 },
  ],
]

describe('contradictions', () => {
  it.each(CASES)('asks about %s, and not where the answers agree', (code, apart, agreeing) => {
    expect(found(apart)).toContain(code)
    expect(found(agreeing)).not.toContain(code)
  })

  it('asks nothing of an empty call', () => {
    expect(found({})).toEqual([])
  })

  it('names the shafts whose makers do not allow the bow', () => {
    const strong: Told = { peakDrawWeightLb: 85, drawLengthIn: 28, wishWeightGr: 1000 }
    expect(found(strong, stockedShelf())).toContain('no shaft for the draw weight')
    expect(found({ ...strong, peakDrawWeightLb: 78 }, stockedShelf())).not.toContain('no shaft for the draw weight')
  })

  it('names the shafts whose makers do not allow the front weight', () => {
    const heavy: Told = { peakDrawWeightLb: 78, drawLengthIn: 28, wishWeightGr: 1050 }
    expect(found(heavy, stockedShelf())).toContain('no shaft for the front weight')
    expect(found({ ...heavy, wishWeightGr: 800 }, stockedShelf())).not.toContain('no shaft for the front weight')
  })

  it('names the questions to ask again', () => {
    const [first] = implications(
      told({ bevelHand: 'left', fletchSide: 'right' }),
      DEFAULT_RULES,
      EMPTY_SHELF,
      TODAY,
    ).contradictions
    expect(first).toMatchObject({ code: 'bevel against fletch', questions: ['bevelHand', 'fletchSide'] })
  })
})
