import { describe, expect, it } from 'vitest'
import { envelopeWords } from '@/ui/words/findings/envelope-findings'

describe('what the envelope says', () => {
  it('names each limit that is broken already', () => {
    expect(
      envelopeWords({ code: 'envelope-already-left', limits: ['reserve below the band', 'vane off the cable'] }),
    ).toBe(
      'This arrow is outside before anything changes: reserve below the band, vane off the cable. Put that right first, then ask how far it may drift.',
    )
  })

  it.each([
    [-4, 'Past 4.0 lb less draw weight there is no figure to judge by.'],
    [4, 'Past 4.0 lb more draw weight there is no figure to judge by.'],
  ])('says where the figures end at %d lb', (change, sentence) => {
    expect(envelopeWords({ code: 'envelope-not-known-past', what: 'draw weight', change, unit: 'lbf' })).toBe(sentence)
  })

  it('says what a reach must be', () => {
    expect(envelopeWords({ code: 'envelope-reach', what: 'draw weight', reach: -2, unit: 'lbf' })).toContain(
      '0 or more',
    )
  })
})
