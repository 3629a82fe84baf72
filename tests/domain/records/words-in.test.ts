import { describe, expect, it } from 'vitest'
import { wordsIn } from '@/domain/records/words-in'

describe('wordsIn', () => {
  it('compares without case, accents and marks between', () => {
    expect(wordsIn('Åke Müller-Sørby, buffalo (Cape)')).toEqual(['ake', 'muller', 'sørby', 'buffalo', 'cape'])
  })
  it('keeps a decimal point inside a number and drops one at the end of a sentence', () => {
    expect(wordsIn('Spine 0.340. Done.')).toEqual(['spine', '0.340', 'done'])
  })
  it('is empty for nothing', () => {
    expect(wordsIn(' ,. – ')).toEqual([])
  })
})
