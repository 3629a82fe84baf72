import { describe, expect, it } from 'vitest'
import type { Contradiction } from '@/domain/call/contradiction'
import { implications } from '@/domain/call/implications'
import { priceOf } from '@/domain/call/price-lines'
import { QUESTIONS } from '@/domain/call/questions'
import { valueIn } from '@/domain/call/follows'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { EMPTY_SHELF } from '@/domain/stock/shelf'
import { answerWords } from '@/ui/words/call/answer-words'
import { contradictionWords } from '@/ui/words/call/contradiction-words'
import { lawCheckWords, needsWords, toSpareWords, weightWords } from '@/ui/words/call/follows-words'
import { showMoney } from '@/ui/words/call/price-words'
import { readBackSentence } from '@/ui/words/call/read-back-words'
import { QUESTION_WORDS } from '@/ui/words/call/question-words'
import { summaryText } from '@/ui/words/call/summary-words'
import { told, TODAY } from '@tests/domain/call/told-call'

describe('the words of the call', () => {
  it('name every question once', () => {
    const labels = QUESTIONS.map(({ id, topic }) => `${topic}: ${QUESTION_WORDS[id].label}`)
    expect(new Set(labels).size).toBe(QUESTIONS.length)
  })

  it('say an answer with its unit', () => {
    expect(answerWords('peakDrawWeightLb', 72)).toBe('72 lb')
    expect(answerWords('travelOn', '2027-01-14')).toBe('14 Jan 2027')
    expect(answerWords('rush', false)).toBe('no')
    expect(answerWords('quantity', 6)).toBe('6')
    expect(answerWords('forceDraw', [[10, 20]])).toBe('10 in at 20 lb')
    // 102 m/s is 334.6456693 ft/s, an inch being 25.4 mm exactly [SP811].
    expect(answerWords('ratedSpeedFps', 102 / 0.3048)).toBe('334.65 ft/s')
  })

  it('read every kind of answer back as a sentence', () => {
    const sample = {
      number: 1,
      count: 2,
      choice: 'right',
      'yes or no': true,
      day: '2027-01-14',
      line: 'x',
      note: { note: 'a'.repeat(64) },
      apart: true,
    }
    for (const { id, shape } of QUESTIONS) {
      const value =
        shape.kind === 'speeds' || shape.kind === 'force curve' ? [[1, 2] as [number, number]] : sample[shape.kind]
      expect(readBackSentence(id, value), id).toMatch(/^[\p{Lu}\d].*\.$/u)
    }
  })

  it('ask about a contradiction with both numbers that were told', () => {
    const label: Contradiction = {
      code: 'draw weight off label',
      peakLb: 74.5,
      labelLb: 70,
      percent: 6.43,
      questions: [],
    }
    expect(contradictionWords(label).said).toBe('74.5 lb is 6 % off a label of 70.')
    const late: Contradiction = {
      code: 'arrives too late',
      arrivesOn: '2026-12-08',
      travelOn: '2026-12-07',
      cureDays: 7,
      days: 1,
      questions: [],
    }
    expect(contradictionWords(late).said).toBe('With 7 days of cure it arrives 8 Dec, 1 day after he travels.')
  })

  it('say what a figure needs, why a weight is sensible, how much time is left', () => {
    expect(needsWords(['quarry', 'wishWeightGr'])).toBe('needs quarry, or finished weight')
    expect(needsWords([])).toBe('no parts on the shelf yet')
    expect(needsWords(['wishWeightGr'], 'kudu')).toBe(
      'the shop has no weights for “kudu”: add them in Shop, or needs finished weight',
    )
    const { weight } = implications(told({ quarry: 'bison', wishWeightGr: 700 }), DEFAULT_RULES, EMPTY_SHELF, TODAY)
    expect(weightWords(valueIn(weight)!)).toBe('the shop’s rule for bison; client asks for 700, light for that')
    expect(toSpareWords('2027-01-14', 36)).toBe('travel 14 Jan: 36 days to spare after transit')
    expect(toSpareWords('2026-12-07', -1)).toBe('travel 7 Dec: 1 day too late')
  })

  it('never say more of the law than what was read', () => {
    const check = { what: 'draw weight', least: 50, unit: 'lbf', value: 72, meets: 'meets' } as const
    expect(lawCheckWords(check)).toBe('draw weight 50 lb or more: 72 lb meets it')
    expect(lawCheckWords({ ...check, value: null, meets: 'not known' })).toBe(
      'draw weight 50 lb or more: not known yet',
    )
  })

  it('write money from whole cents', () => {
    expect(showMoney(0, 'USD')).toBe('USD 0.00')
    expect(showMoney(123_450, 'EUR')).toBe('EUR 1\u202f234.50')
    expect(showMoney(5, 'USD')).toBe('USD 0.05')
  })

  it('sum the call up for the client: what was agreed, what is to come, price and day', () => {
    const answers = told({ quarry: 'bison', quantity: 6 }, ['drawLengthIn'])
    const { ship } = implications(answers, DEFAULT_RULES, EMPTY_SHELF, TODAY)
    const summary = {
      shop: 'My shop',
      jobCode: 'K7QD-1-9',
      client: 'Ada Oduya',
      answers,
      price: priceOf(answers, DEFAULT_RULES),
      ship: valueIn(ship),
      planned: undefined,
    }
    const text = summaryText(summary)
    expect(text).toContain('For Ada Oduya')
    expect(text).toContain('You hunt bison.')
    expect(text).toContain('Draw length: on the measuring sheet, by 30 Nov.')
    expect(text).toContain('Leaves by Thursday 3 December 2026, with you by Tuesday 8 December 2026.')

    const otherwise = 'The sheet has 8 arrows now; this price is for 6.'
    expect(summaryText({ ...summary, planned: 8 })).toContain(otherwise)
    expect(summaryText({ ...summary, planned: 6 })).toBe(text)
  })
})
