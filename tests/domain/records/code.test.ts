import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { codeOf, jobNumber, plainCode, readCode } from '@/domain/records/code'
import { hybridCheck } from '@/domain/records/hybrid-check'

const ALPHANUMERIC = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
const hash = fc
  .array(fc.integer({ min: 0, max: 15 }), { minLength: 64, maxLength: 64 })
  .map((digits) => digits.map((d) => d.toString(16)).join(''))
const log = '01987654-3210-7abc-8def-0123456789ab'

describe('hybridCheck', () => {
  // [ISO7064] MOD 37,36, as the Global Release Identifier standard uses it: the first is its own example.
  it.each(['A12425GABC1234002M', 'B159D8FA01240000K', '188166C7342000003'])(
    'gives the last character of %s',
    (whole) => {
      const values = Array.from(whole.slice(0, -1), (c) => ALPHANUMERIC.indexOf(c))
      expect(ALPHANUMERIC[hybridCheck(values, 36)]).toBe(whole.slice(-1))
    },
  )

  // [ISO7064] MOD 11,10, the example of the standard (from memory): 0794 takes 5.
  it('gives 5 for 0794', () => {
    expect(hybridCheck([0, 7, 9, 4], 10)).toBe(5)
  })
})

describe('a code', () => {
  it('reads back, with dashes and without, in small letters, with the letters people take for digits', () => {
    fc.assert(
      fc.property(hash, (h) => {
        const code = codeOf(h)
        expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/)
        expect(readCode(code)).toBe(plainCode(code))
        expect(readCode(` ${code.toLowerCase().replaceAll('0', 'o').replaceAll('1', 'l')} `)).toBe(plainCode(code))
      }),
    )
  })

  it('does not read with one character wrong, whichever it is', () => {
    fc.assert(
      fc.property(hash, fc.nat(7), fc.integer({ min: 1, max: 31 }), (h, place, by) => {
        const code = plainCode(codeOf(h))
        const wrong = LETTERS[(LETTERS.indexOf(code[place]!) + by) % 32]!
        expect(readCode(code.slice(0, place) + wrong + code.slice(place + 1))).toBeUndefined()
      }),
    )
  })

  it('hardly ever reads with two neighbours swapped', () => {
    let swapped = 0
    let read = 0
    for (let i = 0; i < 2000; i++) {
      const code = plainCode(codeOf((i * 7_919).toString(16).padStart(64, 'a')))
      for (let at = 0; at < 7; at++) {
        if (code[at] === code[at + 1]) continue
        swapped += 1
        if (readCode(code.slice(0, at) + code[at + 1]! + code[at]! + code.slice(at + 2))) read += 1
      }
    }
    expect(swapped).toBeGreaterThan(10_000)
    expect(read / swapped).toBeLessThan(0.005)
  })

  it.each(['', '4', 'hello world', '4J7K-Q2M', '----', 'É123-4567'])('is not %j', (typed) => {
    expect(readCode(typed)).toBeUndefined()
  })
})

describe('jobNumber', () => {
  it('carries the log, the place in it and a check', () => {
    expect(jobNumber(log, 1043)).toMatch(/^[0-9A-Z]{4}-1043-[0-9A-Z]$/)
    expect(readCode(jobNumber(log, 1043))).toBe(plainCode(jobNumber(log, 1043)))
  })

  it('differs between places in a log and between logs', () => {
    const numbers = new Set(Array.from({ length: 3000 }, (_, seq) => jobNumber(log, seq + 1)))
    expect(numbers.size).toBe(3000)
    expect(numbers.has(jobNumber(log.replace('89ab', '89ac'), 1))).toBe(false)
  })
})
