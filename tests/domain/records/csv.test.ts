import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { csvRow } from '@/domain/records/csv'

/** Reads one row by the grammar of [RFC4180] section 2. */
function parse(row: string): string[] {
  const cells: string[] = []
  const pattern = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy
  for (let match = pattern.exec(row); match; match = pattern.exec(row)) {
    cells.push(match[1] === undefined ? match[2]! : match[1].replaceAll('""', '"'))
    if (match[3] !== ',') break
  }
  return cells
}

describe('csvRow', () => {
  it('is read back as it was written, whatever is in the texts', () => {
    const safe = fc.string({ unit: 'binary' }).filter((text) => !/^[=+\-@\t\r]/.test(text))
    fc.assert(
      fc.property(fc.array(safe, { minLength: 1, maxLength: 6 }), (cells) => {
        expect(parse(csvRow(cells))).toEqual(cells)
      }),
    )
  })

  it.each(['=1+1', '+1', '-1', '@sum', '\t=1', '\r=1', '=cmd|" /c calc"!A1'])(
    'leaves no formula in a text: %j',
    (text) => {
      expect(parse(csvRow([text]))[0]).toBe(`'${text}`)
    },
  )

  it('leaves numbers numbers, below zero too, and an empty cell empty', () => {
    expect(csvRow([-1.5, 0.1, null, 1e21])).toBe('-1.5,0.1,,1e+21\r\n')
  })
})
