import { describe, expect, it } from 'vitest'
import { mendOptions } from '@/domain/bench/mend-options'
import { todaysLines } from '@/domain/book/rebuild'
import { stockOnShelf } from '@/domain/search/stock-on-shelf'
import { testKit } from '@/domain/search/test-kit'
import { findOnShelf, indexShelf } from '@/domain/stock/find-on-shelf'
import { firstToWeigh } from '@/domain/stock/first-to-weigh'
import type { Shelf } from '@/domain/stock/shelf'
import { lotsOfPart } from '@/domain/stock/lots-of-part'
import { demoSheet } from '@tests/support/demo-sheet'
import { seeded } from '@tests/support/seeded'
import { testId } from '@tests/support/test-id'
import { demoShelf } from '../search/demo-shelf'

const full = demoShelf({ roll: seeded(4) })
const unweighed: Shelf = {
  ...full,
  lotViews: new Map([...full.lotViews].map(([id, view]) => [id, { ...view, weighed: [] }])),
}
/** The same shelf with every lot on hold. */
const hold = (shelf: Shelf): Shelf => ({
  ...shelf,
  lots: new Map([...shelf.lots].map(([id, lot]) => [id, { ...lot, body: { ...lot.body, hold: 'recalled' } }])),
})
const SHEET = demoSheet({ targetGr: 815, c2cIn: 28, quantity: 3 }, undefined, { peakDrawWeightLb: 72 })

/** Every lot that some page would offer, by who offers it. */
const OFFERS: Readonly<Record<string, (shelf: Shelf) => readonly (string | null)[]>> = {
  'the sheet’s parts': (shelf) =>
    [...shelf.parts.keys()].flatMap((part) => lotsOfPart(shelf, part).map(({ id }) => id)),
  'the search': (shelf) => stockOnShelf(SHEET, shelf).map(({ lot }) => lot),
  'a rebuild': (shelf) => todaysLines(SHEET, shelf).map(({ line }) => line.lot),
  'a mend at the bench': (shelf) => mendOptions(SHEET, shelf, testId(99)).map(({ fitted }) => fitted.lot),
  'a test kit': (shelf) => {
    const kit = testKit(SHEET, shelf)
    return typeof kit === 'string' ? [] : kit.samples.map(({ lot }) => lot)
  },
  'a first weighing': (shelf) => firstToWeigh({ ...unweighed, lots: shelf.lots })?.lots.map(({ lot }) => lot) ?? [],
}

describe('a lot on hold', () => {
  it.each(Object.entries(OFFERS))('is offered nowhere: %s', (_, offers) => {
    const isLot = (lot: string | null) => lot !== null
    expect(offers(full).filter(isLot).length).toBeGreaterThan(0)
    expect(offers(hold(full)).filter(isLot)).toEqual([])
  })

  it('counts as none free in the list of parts, which says why', () => {
    const rows = findOnShelf(indexShelf(hold(full)), '').flatMap(({ parts }) => parts)
    expect(rows.length).toBeGreaterThan(0)
    expect(rows.every(({ free, held }) => free === 0 && held)).toBe(true)
  })
})
