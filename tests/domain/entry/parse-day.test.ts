import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseDay } from '@/domain/entry/parse-day'

const TODAY = '2026-11-25'
const day = (text: string) => {
  const entry = parseDay(text, TODAY)
  return entry.kind === 'day' ? entry.day : entry.problem.code
}

describe('parseDay', () => {
  it.each([
    ['2027-01-14', '2027-01-14'],
    ['14 Jan 2027', '2027-01-14'],
    ['14 January 27', '2027-01-14'],
    ['14th jan. 2027', '2027-01-14'],
    ['Jan 14, 2027', '2027-01-14'],
    ['14jan', '2027-01-14'],
    ['25 Nov', '2026-11-25'],
    ['24 Nov', '2027-11-24'],
    ['9 Dec', '2026-12-09'],
    ['14/1/2027', '2027-01-14'],
    ['1/14/2027', '2027-01-14'],
    ['14.1.27', '2027-01-14'],
    ['3/3/2027', '2027-03-03'],
    ['29 Feb 2028', '2028-02-29'],
  ])('reads %s as %s', (text, iso) => {
    expect(day(text)).toBe(iso)
  })

  it.each([
    ['', 'empty'],
    ['soon', 'not a day'],
    ['14', 'not a day'],
    ['2027-01-14T00:00', 'not a day'],
    ['1 of 2 of 3', 'not a day'],
    ['x'.repeat(500), 'not a day'],
    ['30 Feb 2027', 'no such day'],
    ['29 Feb 2027', 'no such day'],
    ['29 Feb 2100', 'no such day'],
    ['2027-13-01', 'no such day'],
    ['32/13/2027', 'no such day'],
    ['31.2.', 'no such day'],
    ['3/4/2027', 'two readings'],
  ])('says that %j is %s', (text, code) => {
    expect(day(text)).toBe(code)
  })

  it('agrees with the platform calendar on every day of four centuries', () => {
    fc.assert(
      fc.property(fc.integer({ min: Date.UTC(1900, 0, 1) / 864e5, max: Date.UTC(2299, 11, 31) / 864e5 }), (days) => {
        const iso = new Date(days * 864e5).toISOString().slice(0, 10)
        expect(day(iso)).toBe(iso)
      }),
    )
  })

  it('never throws, and gives only days the platform calendar has', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom(...'0123456789 /.-janfebmrydec'.split('')) }),
    )
    fc.assert(
      fc.property(text, (typed) => {
        const entry = parseDay(typed, TODAY)
        if (entry.kind === 'day') expect(new Date(entry.day).toISOString().slice(0, 10)).toBe(entry.day)
      }),
      { numRuns: 2000 },
    )
  })
})
