// Lines as plain-text balances commonly send them: common practice, no source. The grams and grains are told apart by unit.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lineSplitter, readScaleLine } from '@/domain/bench/scale-line'

const weight = (text: string) => {
  const line = readScaleLine(text)
  return line.kind === 'weight' ? [line.value, line.unit, line.stable] : line.kind
}

describe('a line of a scale', () => {
  it.each([
    ['ST,GS,+  826.4 GN', [826.4, 'gr', true]],
    ['ST,NT,-    0.3 GN', [-0.3, 'gr', true]],
    ['US,GS,+  826.1 GN', [826.1, 'gr', false]],
    ['S S     826.4 gr', [826.4, 'gr', true]],
    ['S D     826.4 gr', [826.4, 'gr', false]],
    ['+  826.4 gn', [826.4, 'gr', undefined]],
    ['826,4 grn', [826.4, 'gr', undefined]],
    ['  826.4?', [826.4, undefined, false]],
    ['53.55 g', [53.55, 'g', undefined]],
    ['1.889 oz', [1.889, 'oz', undefined]],
    ['267.75 ct', [267.75, 'ct', undefined]],
    ['- 0.5 gr', [-0.5, 'gr', undefined]],
    ['0.0 GN S', [0, 'gr', true]],
    ['826.4', [826.4, undefined, undefined]],
  ] as const)('%s', (text, said) => {
    expect(weight(text)).toEqual(said)
  })

  it.each(['OL', 'S +', 'S -', 'OL,GS,+9999.9 GN', 'Err', '  H'])('%s is more than it can weigh', (text) => {
    expect(readScaleLine(text).kind).toBe('overload')
  })

  it.each([
    '',
    '826.4 826.4 gr',
    '82 6.4 gr',
    '8a26.4 gr',
    '826.4 xx',
    '2026-11-25',
    '12:30:05',
    'No. 12',
    '1.2.3 gr',
    '\u0002826.4 gr',
    '9'.repeat(50),
  ])('“%s” says nothing', (text) => {
    expect(readScaleLine(text).kind).toBe('noise')
  })

  it('answers any text, and reads a number only where one stands', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary-ascii', maxLength: 60 }), (text) => {
        const line = readScaleLine(text)
        if (line.kind === 'weight') expect(Number.isFinite(line.value)).toBe(true)
        else expect(line.raw.length).toBeLessThanOrEqual(40)
      }),
    )
  })
})

describe('lines out of chunks', () => {
  it('come out alike however they are split, but for the first, which may be a tail', () => {
    const sent = 'ST,GS,+ 12.3 GN\r\nUS,GS,+826.1 GN\r\nST,GS,+826.4 GN\r\n'
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 20 })), (cuts) => {
        const split = lineSplitter()
        const lines: string[] = []
        let at = 0
        for (const cut of [...cuts, sent.length]) {
          lines.push(...split(sent.slice(at, at + cut)))
          at += cut
        }
        expect(lines).toEqual(['US,GS,+826.1 GN', 'ST,GS,+826.4 GN'])
      }),
    )
  })

  it('forgets a line that has no end, and trusts nothing until the next one', () => {
    const split = lineSplitter()
    split('\r\n')
    expect(split('9'.repeat(400))).toEqual([])
    expect(split('26.4 GN\r\nST,GS,+826.4 GN\r\n')).toEqual(['ST,GS,+826.4 GN'])
  })
})
