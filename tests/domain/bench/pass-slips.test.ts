// The bounds are ours: two readings of a 0.1 gr scale differ by less than 0.25 gr, and three heavy passes are more than any
// builder takes between two weighings. Common practice, no source [CP].
import { describe, expect, it } from 'vitest'
import { slipsOf } from '@/domain/bench/slips'

const codes = (value: number) =>
  slipsOf(value, 'gr', {
    expected: { value: 800, half: 800, closure: false },
    pass: { was: 800, heavyGr: 3 },
  }).map(({ code }) => code)

describe('a weight after a pass', () => {
  it.each([800.2, 799.9, 797, 791.1])('of %f gr after 800 is taken', (value) => {
    expect(codes(value)).toEqual([])
  })

  it.each([800.3, 803])('of %f gr is asked about as wet: nothing grows at a grinder', (value) => {
    expect(codes(value)).toEqual(['gained'])
  })

  it.each([790.9, 700])('of %f gr is asked about: no pass takes so much, but heat lifts a pan', (value) => {
    expect(codes(value)).toEqual(['lost-much'])
  })

  it('in grams, or with its point moved, is asked about as that', () => {
    expect(codes(51.84)).toEqual(['grams-for-grains'])
    expect(codes(80)).toEqual(['decimal-moved'])
  })
})
