import { describe, expect, it } from 'vitest'
import { parseDay } from '@/domain/entry/parse-day'
import { parseQuantity } from '@/domain/entry/parse-quantity'
import type { Asked } from '@/domain/entry/parse-quantity'
import { dayWords, entryWords, expectedWords } from '@/ui/words/entry-words'

const DRAW: Asked = { unit: 'lbf', min: 10, max: 150 }

const said = (raw: string, asked = DRAW) => {
  const entry = parseQuantity(raw, asked)
  return entry.kind === 'problem' ? entryWords('Peak draw weight', entry.problem, raw, asked) : 'taken'
}

describe('the sentence for an entry', () => {
  it('says what a field expects', () => {
    expect(expectedWords(DRAW)).toBe('10 to 150 pounds')
    expect(expectedWords({ unit: '1', min: 1, max: 12, whole: true })).toBe('a whole number, 1 to 12')
    expect(expectedWords({ unit: 'in', min: 0.05, max: 0.2 })).toBe('0.05 to 0.2 inches')
  })

  it.each([
    ['', 'Peak draw weight is empty. Expected: 10 to 150 pounds.'],
    ['strong', 'Peak draw weight: “strong” is not a number. Expected: 10 to 150 pounds.'],
    ['70 to 72', 'Peak draw weight: “70 to 72” holds more than one number. Expected: 10 to 150 pounds.'],
    ['70 ells', 'Peak draw weight: the unit in “70 ells” is not known here. Expected: 10 to 150 pounds.'],
    ['72 cm', 'Peak draw weight: “72 cm” is in centimetres, not a draw weight. Expected: 10 to 150 pounds.'],
    ['7', 'Peak draw weight: “7” is too small. Expected: 10 to 150 pounds.'],
    ['720', 'Peak draw weight: “720” is too large. Expected: 10 to 150 pounds.'],
  ])('names field, entry and expectation for %j', (raw, sentence) => {
    expect(said(raw)).toBe(sentence)
  })

  it('asks which of two readings is meant', () => {
    expect(said('1,200', { unit: 'gr', min: 0, max: 2000 })).toBe(
      'Peak draw weight: “1,200” could be 1.2 or 1200. Type it without the comma.',
    )
    const entry = parseDay('3/4/2027', '2026-11-25')
    expect(entry.kind === 'problem' && dayWords('Travel', entry.problem, entry.raw)).toBe(
      'Travel: “3/4/2027” could be Saturday 3 April 2027 or Thursday 4 March 2027. Type the month as a word.',
    )
  })
})
