import { describe, expect, it } from 'vitest'
import { questionsAsked } from '@/domain/call/asked'
import {
  measuringItems,
  notAsked,
  openQuestions,
  topicStates,
  usualDue,
  usualOwner,
} from '@/domain/call/open-questions'
import { told, TODAY } from './told-call'

describe('openQuestions', () => {
  it('names what was put off, who owes it and by when', () => {
    const open = openQuestions(told({ bowKind: 'compound' }, ['drawLengthIn', 'markAtRestIn']))
    expect(open.map(({ question, owedBy, due }) => [question.id, owedBy, due])).toEqual([
      ['drawLengthIn', 'client', '2026-11-30'],
      ['markAtRestIn', 'client', '2026-11-30'],
    ])
  })

  it('counts what stands in the client’s own record only while it is owed', () => {
    expect(openQuestions(told({}, ['clientPhone'])).map(({ question }) => question.id)).toEqual(['clientPhone'])
    expect(questionsAsked(told({})).filter(({ topic }) => topic === 'client')).toEqual([])
  })

  it('forgets a question that the kind of bow made pointless', () => {
    expect(openQuestions(told({ bowKind: 'longbow' }, ['letOffPercent']))).toEqual([])
  })
})

describe('measuringItems', () => {
  it('has one drawing for each way of measuring that is open, and none for the others', () => {
    const answers = told({ braceHeightIn: 6.75 }, ['markAtRestIn', 'markAtRiserIn', 'peakDrawWeightLb', 'hand'])
    expect(measuringItems(answers).map(({ measure, open }) => [measure, open.length])).toEqual([
      ['draw weight', 1],
      ['marks', 2],
    ])
  })
})

describe('questionsAsked', () => {
  it('asks a longbow nothing of cams', () => {
    const ids = questionsAsked(told({ bowKind: 'longbow' }), 'bow').map(({ id }) => id)
    expect(ids).not.toContain('letOffPercent')
    expect(ids).not.toContain('moduleMark')
    expect(ids).toContain('braceHeightIn')
  })

  it('asks nothing of blades where only field points are wanted', () => {
    const ids = questionsAsked(told({ headKind: 'field point' })).map(({ id }) => id)
    expect(ids).not.toContain('bevelHand')
    expect(ids).not.toContain('fieldPoints')
    expect(ids).toContain('headWeightGr')
  })
})

describe('topicStates', () => {
  it('counts what is answered, put off and not asked', () => {
    const hunt = topicStates(told({ quarry: 'moose', place: 'Alaska' }, ['travelOn']))[0]!
    expect(hunt).toEqual({ topic: 'hunt', answered: 2, open: 1, notAsked: 3 })
    expect(notAsked(told({ quarry: 'moose' }), 'hunt').map(({ id }) => id)).not.toContain('quarry')
  })
})

describe('usualDue', () => {
  it.each([
    [null, '2026-11-30'],
    ['2027-01-05', '2026-11-30'],
    ['2026-11-26', '2026-11-26'],
    ['2026-11-01', TODAY],
  ])('with the bench to begin by %s is %s', (beginBy, due) => {
    expect(usualDue(TODAY, beginBy)).toBe(due)
  })

  it('leaves the guide’s demands with the guide', () => {
    expect(usualOwner('guideLeastGr')).toBe('guide')
    expect(usualOwner('drawLengthIn')).toBe('client')
  })
})
