import { describe, expect, it } from 'vitest'
import { parseClock } from '@/domain/entry/parse-clock'
import { parseDuration } from '@/domain/entry/parse-duration'

describe('parseClock', () => {
  it.each([
    ['14:05', 14, 5],
    ['14.05', 14, 5],
    ['14h05', 14, 5],
    ['1405', 14, 5],
    ['9:30', 9, 30],
    ['930', 9, 30],
    ['00:00', 0, 0],
    ['12:10 am', 0, 10],
    ['12:10 pm', 12, 10],
    ['2:05 PM', 14, 5],
    ['9 am', 9, 0],
    [' 23:59 ', 23, 59],
  ])('reads %j', (text, hour, minute) => {
    expect(parseClock(text)).toEqual({ kind: 'clock', hour, minute })
  })

  it.each(['24:00', '14:60', '13:00 pm', '0:30 am', '9', 'noon', '14:5', '-1:30', '14:05:09'])('refuses %j', (text) => {
    expect(parseClock(text)).toEqual({ kind: 'problem', problem: 'not a time' })
  })

  it('says when nothing was typed', () => {
    expect(parseClock('  ')).toEqual({ kind: 'problem', problem: 'empty' })
  })
})

describe('parseDuration', () => {
  it.each([
    ['24 h', 86_400],
    ['20 min', 1200],
    ['20', 1200],
    ['90 s', 90],
    ['1 h 30', 5400],
    ['1 h 30 min', 5400],
    ['1:30', 5400],
    ['1.5 hours', 5400],
    ['1,5 h', 5400],
    ['2 days', 172_800],
    ['2 d 4 h', 187_200],
  ])('reads %j', (text, seconds) => {
    expect(parseDuration(text)).toEqual({ kind: 'duration', seconds })
  })

  it.each(['0', 'soon', '20 weeks', '-5 min', '30 min 1 h', '5 5', '1 h h'])('refuses %j', (text) => {
    expect(parseDuration(text)).toEqual({ kind: 'problem', problem: 'not a duration' })
  })

  it('refuses what no glue takes', () => {
    expect(parseDuration('100 days')).toEqual({ kind: 'problem', problem: 'too long' })
  })
})
