import { describe, expect, it } from 'vitest'
import { codeAsked } from '@/domain/book/code-asked'
import { dayAsked, wordsAsked, wordsIn } from '@/domain/records/words-in'

describe('wordsIn', () => {
  it('compares without case, accents and marks between', () => {
    expect(wordsIn('Åke Müller-Sørby, buffalo (Cape)')).toEqual(['ake', 'muller', 'sørby', 'buffalo', 'cape'])
  })
  it('keeps a decimal point inside a number and drops one at the end of a sentence', () => {
    expect(wordsIn('Spine 0.340. Done.')).toEqual(['spine', '0.340', 'done'])
  })
  it('takes a day for one word, and as much of one as was typed', () => {
    expect(wordsIn('opened 2026-03-04, sent 2026-05')).toEqual(['2026-03-04', '2026-05', 'opened', 'sent'])
    const typed = ['2026-', '2026-0', '2026-03', '2026-03-', '2026-03-0']
    expect(typed.map(wordsIn)).toEqual(typed.map((text) => [text]))
  })
  it('takes no other figures for a day', () => {
    expect(wordsIn('040-2026-03')).toEqual(['040', '2026', '03'])
    expect(wordsIn('L2026-03 LOT2024-11-A')).toEqual(['l2026', '03', 'lot2024', '11', 'a'])
    expect(wordsIn('2019-2024, season 2019-20')).toEqual(['2019', '2024', 'season', '2019', '20'])
  })
  it('is empty for nothing', () => {
    expect(wordsIn(' ,. – ')).toEqual([])
  })
})

describe('wordsAsked', () => {
  it('takes a day however its parts are set apart, the year first', () => {
    const typed = ['2026-03-04', '2026-3-4', '2026/03/04', '2026.3.4', '2026 03 04', '2026/3/04']
    expect(typed.map(wordsAsked)).toEqual(typed.map(() => ['2026-03-04']))
    expect(wordsAsked('moose 2026/03/04')).toEqual(['2026-03-04', 'moose'])
    expect(['2026/03', '2026.03', '2026-03'].map(wordsAsked)).toEqual([['2026-03'], ['2026-03'], ['2026-03']])
  })
  it('leaves anything else as it was typed', () => {
    for (const text of [
      '2026 785',
      '2026 03',
      '2026 03/04',
      'L2026 03 04',
      '1.2026.03',
      'moose 12 04',
      '2026-03',
      '2026/3',
    ]) {
      expect(wordsAsked(text)).toEqual(wordsIn(text))
    }
  })
  it('is told apart from the code of a record, which some days would read as', () => {
    expect(dayAsked('2026 03 01')).toBe('2026-03-01')
    expect(codeAsked('2026 03 01')).toBeDefined()
    expect(dayAsked('4J7K-Q2MB')).toBeUndefined()
    expect(dayAsked('2026')).toBeUndefined()
  })
})
