import { describe, expect, it } from 'vitest'
import { findParts } from '@/domain/search/find-parts'
import type { SearchProblem, Wishes } from '@/domain/search/wishes'
import { brokenWishWords, searchWords } from '@/ui/words/findings/search-findings'
import { dice, problemOf, shelf } from '@tests/domain/search/shelf-of-stock'

const stock = shelf(dice(3), { shafts: 2, inserts: 3, collars: 1, heads: 4, nocks: 2, vanes: 2, wraps: 1 })
const asked = (wishes: Partial<Wishes>, more: Partial<SearchProblem> = {}) => ({ ...problemOf(stock, wishes), ...more })
const wordsOf = (problem: SearchProblem) => findParts(problem).findings.map((f) => searchWords(f, () => 'That part'))
const only = (problem: SearchProblem, kinds: readonly string[]): SearchProblem => ({
  ...problem,
  stock: problem.stock.filter(({ record }) => !kinds.includes(record.kind)),
})

describe('an absurd wish gets words', () => {
  it.each<[string, SearchProblem, RegExp]>([
    ['no target', asked({ targetGr: Number.NaN }), /^No finished weight to look for\. Enter/],
    ['0 gr', asked({ targetGr: 0 }), /^Finished weight of 0\.0 gr: a search takes 50\.0 gr to 5000\.0 gr\./],
    ['an infinite target', asked({ targetGr: Infinity }), /^No finished weight/],
    [
      '60 gr',
      asked({ targetGr: 60 }),
      /60\.0 gr is lighter than anything these parts make; the lightest is \d+\.\d gr/,
    ],
    ['4,000 gr', asked({ targetGr: 4000 }), /is heavier than anything these parts make; the heaviest is \d+\.\d gr/],
    ['no arrows', asked({ quantity: 0 }), /^Quantity of 0: a search takes 1 to 144/],
    [
      'an empty window',
      asked({ foc: { min: 30, max: 20, tolerance: 0.5 } }),
      /^No FOC is both at least 30\.0 % and at most 20\.0 %/,
    ],
    ['an empty reserve band', asked({ reserve: { min: 1.3, max: 0.7, tolerance: 0.05 } }), /^No reserve is both/],
    [
      'a window of no numbers',
      asked({ foc: { min: Number.NaN, max: 20, tolerance: 0.5 } }),
      /^The FOC asked for is no number/,
    ],
    ['cuts from long to short', asked({ c2cIn: { min: 31, max: 27, step: 0.5 } }), /^No cut length is both/],
    ['no step', asked({ c2cIn: { min: 27, max: 31, step: 0 } }), /^Cut length of 0\.00 in/],
    ['none to show', asked({ most: 0 }), /^Arrows to show of 0/],
    [
      'an impossible FOC',
      asked({ foc: { min: 80, max: 90, tolerance: 0.5 } }),
      /^None of .* keeps every wish\. Below are the nearest/,
    ],
    ['an empty shelf', asked({}, { stock: [] }), /^Nothing on the shelf for the shaft\. Receive some/],
    ['no heads', only(asked({}), ['broadhead', 'field point']), /^Nothing on the shelf for the head\./],
    ['a thousand arrows', asked({ quantity: 140 }), /^That part: \d+ pieces free, the set takes 140\. Left out/],
    [
      'a bow beyond the shafts',
      asked({}, { stock: stock.map((item) => ({ ...item, record: { ...item.record, maxDrawWeightLb: 60 } })) }),
      /its maker allows a draw weight of 60 lb at most/,
    ],
    [
      'cuts longer than the shafts',
      asked({ c2cIn: { min: 33, max: 35, step: 0.5 } }),
      /comes 33\.00 in long and cannot be cut to 35\.00 in/,
    ],
    [
      'vanes behind the nock',
      asked({}, { build: { vaneTailIn: 0, fletchSide: 'right', frontPoint: 'shaft front' } }),
      /would lie behind the shaft/,
    ],
    [
      'an unknown bow',
      { ...asked({}), launch: undefined } as unknown as SearchProblem,
      /^The bow’s draw weight is not known/,
    ],
    [
      'threads that do not meet',
      asked(
        {},
        {
          stock: stock.map((item) =>
            item.record.kind === 'insert' ? { ...item, record: { ...item.record, thread: 'other' } } : item,
          ),
        },
      ),
      /^No insert, half-out or outsert here goes with any head/,
    ],
    [
      'posts wider than the bores',
      asked(
        {},
        {
          stock: stock.map((item) =>
            item.record.kind === 'insert' ? { ...item, record: { ...item.record, postDiameterMm: 8 } } : item,
          ),
        },
      ),
      /^No shaft here goes with any insert/,
    ],
    [
      'a left bevel on a right fletch',
      asked(
        {},
        {
          stock: stock.map((item) =>
            item.record.kind === 'broadhead' ? { ...item, record: { ...item.record, bevel: 'left' } } : item,
          ),
        },
      ),
      /a left bevel turns against a right fletch/,
    ],
    [
      'a step of a hair',
      asked(
        { c2cIn: { min: 8, max: 40, step: 0.01 } },
        { stock: [...stock, ...Array.from({ length: 130 }, () => stock[0]!)] },
      ),
      /combinations of one end of the arrow alone/,
    ],
    [
      'more than there are',
      asked(
        {
          overGr: { min: 0, max: 60 },
          foc: undefined,
          reserve: undefined,
          clearance: undefined,
          leastChance: undefined,
          most: 50,
          c2cIn: { min: 28, max: 28, step: 1 },
          targetGr: 760,
        },
        {},
      ),
      /^Only \d+ arrows? of the 50 asked for/,
    ],
  ])('%s', (_, problem, words) => {
    const said = wordsOf(problem)
    expect(said.join('\n')).toMatch(new RegExp(words.source, 'm'))
    expect(said.join(' ')).not.toMatch(/undefined|NaN|\[object/)
  })

  it('and each nearest miss names the wish that it breaks, by how much', () => {
    const { misses } = findParts(asked({ foc: { min: 80, max: 90, tolerance: 0.5 } }))
    expect(misses.length).toBeGreaterThan(0)
    for (const { breaks } of misses) {
      expect(breaks.length).toBeGreaterThan(0)
      expect(breaks.map(brokenWishWords).join('\n')).toMatch(/^FOC \d+\.\d %, \d+\.\d % below 80\.0 %$/m)
    }
  })
})
