import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { csvRow } from '@/domain/records/csv'
import { readCsv } from '@/domain/records/read-csv'

const cellsOf = (text: string) => {
  const read = readCsv(text)
  return read.kind === 'rows' ? read.rows.map(({ cells }) => cells) : read
}

describe('readCsv', () => {
  // [RFC4180] section 2, rules 1 to 7, with the standard's own examples.
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('reads %j', (text, cells) => {
    expect(cellsOf(text)).toEqual(cells)
  })

  it('tells semicolons and tabs from commas by the headings', () => {
    expect(cellsOf('name;weight\r\nVane;7,2\r\n')).toEqual([
      ['name', 'weight'],
      ['Vane', '7,2'],
    ])
    expect(cellsOf('name\tweight\nVane\t7.2')).toEqual([
      ['name', 'weight'],
      ['Vane', '7.2'],
    ])
    expect(cellsOf('"a;b;c",weight\nVane,7')).toEqual([
      ['a;b;c', 'weight'],
      ['Vane', '7'],
    ])
  })

  it('names the line of the file, also after a cell of several lines and an empty line', () => {
    const read = readCsv('a,b\r\n"1\n2",x\r\n\r\nlast,y')
    expect(read.kind === 'rows' && read.rows.map(({ line }) => line)).toEqual([1, 2, 5])
  })

  it('says where a quotation mark was opened that is never closed', () => {
    expect(readCsv('a,b\nc,d\ne,"f')).toEqual({ kind: 'open quote', line: 3 })
  })

  it('reads nothing as no rows, and a byte order mark as nothing', () => {
    expect(cellsOf('')).toEqual([])
    expect(cellsOf('\uFEFFa,b')).toEqual([['a', 'b']])
  })

  it('reads back whatever our own tables say', () => {
    const cell = fc.string({ unit: 'grapheme', maxLength: 12 }).filter((text) => !/^[=+\-@\t\r]/.test(text))
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
        const text = [csvRow(['one', 'two', 'three']), ...rows.map(csvRow)].join('')
        const told = rows.filter((cells) => cells.some((each) => each.trim() !== ''))
        // A space before a quotation mark is dropped with it, and no cell of ours has one.
        expect(cellsOf(text)).toEqual([['one', 'two', 'three'], ...told])
      }),
    )
  })
})
