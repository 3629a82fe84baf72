import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseQuantity } from '@/domain/entry/parse-quantity'
import type { Asked } from '@/domain/entry/parse-quantity'

const WEIGHT: Asked = { unit: 'gr', min: 100, max: 1500 }
const LENGTH: Asked = { unit: 'in', min: 15, max: 36 }
const ANY_LENGTH: Asked = { unit: 'in', min: -40, max: 4000 }
const DRAW: Asked = { unit: 'lbf', min: 10, max: 150 }
const SPINE: Asked = { unit: 'in', min: 0.1, max: 1.2, thousandths: true }
const ROOM: Asked = { unit: '°C', min: -20, max: 60 }
const ARROWS: Asked = { unit: '1', min: 1, max: 12, whole: true }

const value = (text: string, asked: Asked) => {
  const entry = parseQuantity(text, asked)
  return entry.kind === 'number' ? entry.value : entry.problem.code
}

describe('parseQuantity', () => {
  it.each([
    ['28.5', 28.5],
    ['28,5', 28.5],
    [' 28.5 ', 28.5],
    ['28½', 28.5],
    ['28 ½', 28.5],
    ['28 1/2', 28.5],
    ['28-1/2', 28.5],
    ['28 1/2 in', 28.5],
    ['28 3/16"', 28.1875],
    ['28.5″', 28.5],
    ['28.5 inches', 28.5],
    ['28.', 28],
    ['28,125', 28.125],
    ['1.', 1],
    ['.75', 0.75],
    ['3/4', 0.75],
    ['-1 1/4', -1.25],
    ['−0.5', -0.5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1\u202f234.5', 1234.5],
    ["1'234", 1234],
    ['2 ft', 24],
    ["2'", 24],
  ])('reads %s as inches', (text, inches) => {
    expect(value(text, ANY_LENGTH)).toBeCloseTo(inches, 12)
  })

  // 1 in = 25.4 mm, 1 gr = 64.79891 mg, both exact [NIST SP 811, App. B]; °F from the same place.
  it.each([
    ['723.9 mm', LENGTH, 28.5],
    ['72,39 cm', LENGTH, 28.5],
    ['32.399455 g', WEIGHT, 500],
    ['72 lbs', DRAW, 72],
    ['70#', DRAW, 70],
    ['70 LB', DRAW, 70],
    ['311.375513 N', DRAW, 70],
    ['31,751466 kg', DRAW, 70], // 0.45359237 kg to the pound, weighed where a bow scale is read
    ['72 °F', ROOM, 22.2222222],
    ['22 C', ROOM, 22],
  ])('reads %s by its own unit', (text, asked, expected) => {
    expect(value(text, asked)).toBeCloseTo(expected, 6)
  })

  it('reads a bare number in the unit that stands beside the field', () => {
    expect(parseQuantity('723.9', LENGTH, 'mm')).toMatchObject({ kind: 'number', value: 28.5, unit: 'in', typed: 'mm' })
    expect(parseQuantity('28.5 in', LENGTH, 'mm')).toMatchObject({ kind: 'number', value: 28.5, typed: 'in' })
  })

  it('takes a spine said in thousandths', () => {
    expect(value('340', SPINE)).toBe(0.34)
    expect(value('0.340', SPINE)).toBe(0.34)
    expect(value('.34', SPINE)).toBe(0.34)
  })

  it('lets the bounds settle what a comma means, and asks when they cannot', () => {
    expect(value('1,200', WEIGHT)).toBe(1200)
    expect(value('28,125', LENGTH)).toBe(28.125)
    expect(value('0,340', SPINE)).toBe(0.34)
    expect(parseQuantity('1,200', ANY_LENGTH)).toMatchObject({
      problem: { code: 'two readings', readings: [1.2, 1200] },
    })
  })

  it.each([
    ['', WEIGHT, 'empty'],
    ['   ', WEIGHT, 'empty'],
    [' '.repeat(60), WEIGHT, 'empty'],
    ['heavy', WEIGHT, 'not a number'],
    ['gr 650', WEIGHT, 'not a number'],
    ['~650', WEIGHT, 'not a number'],
    ['1.2.3', WEIGHT, 'not a number'],
    ['12,34,5', WEIGHT, 'not a number'],
    ['1/0', WEIGHT, 'not a number'],
    ['NaN', WEIGHT, 'not a number'],
    ['Infinity', WEIGHT, 'not a number'],
    ['70 to 72', DRAW, 'more than one number'],
    ['70-72', DRAW, 'more than one number'],
    ['70 72', DRAW, 'more than one number'],
    ['1e3', WEIGHT, 'more than one number'],
    ['0x28', LENGTH, 'more than one number'],
    ['28 furlongs', LENGTH, 'unknown unit'],
    ['650 constructor', WEIGHT, 'unknown unit'],
    ['650 __proto__', WEIGHT, 'unknown unit'],
    ['650 mm', WEIGHT, 'wrong unit'],
    ['72 kg', DRAW, 'out of bounds'],
    ['72 cm', DRAW, 'wrong unit'],
    ['99.9', WEIGHT, 'out of bounds'],
    ['1500.1', WEIGHT, 'out of bounds'],
    ['-650', WEIGHT, 'out of bounds'],
    ['6.5', ARROWS, 'not whole'],
    ['9'.repeat(41), WEIGHT, 'too long'],
    ['9'.repeat(40), WEIGHT, 'out of bounds'],
  ])('says why %j is no entry', (text, asked, code) => {
    expect(parseQuantity(text, asked)).toMatchObject({ kind: 'problem', problem: { code }, raw: text })
  })

  it('takes both ends of the bounds and nothing past them', () => {
    expect([value('100', WEIGHT), value('1500', WEIGHT)]).toEqual([100, 1500])
  })

  it('never throws, and gives only finite numbers inside the bounds, with the text kept', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom(...`0123456789.,' -+−/½¾"'grinmlb#°CeE\u202f`.split('')) }),
    )
    fc.assert(
      fc.property(text, fc.constantFrom(WEIGHT, LENGTH, ANY_LENGTH, DRAW, SPINE, ROOM, ARROWS), (typed, asked) => {
        const entry = parseQuantity(typed, asked)
        expect(entry.raw).toBe(typed)
        if (entry.kind === 'number') expect(entry.value >= asked.min && entry.value <= asked.max).toBe(true)
      }),
      { numRuns: 3000 },
    )
  })
})
