// long because a second bookkeeping stands beside what it is held against
import { describe, expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { EventDraft } from '@/domain/records/write'
import { newEvent, newFact } from '@/domain/records/write'
import type { Id } from '@/domain/records/scalars'
import type { ViewRules } from '@/domain/records/view-rules'
import type { DataPoint } from '@/domain/bench/data-points'
import { DATA_POINTS } from '@/domain/bench/data-points'
import { Book } from '@/storage/book'
import { openRepository } from '@/storage/open-repository'
import { rebuildAllViews } from '@/storage/rebuild-views'
import { demoSheet } from '@tests/support/demo-sheet'
import { seeded } from '@tests/support/seeded'
import { testId } from '@tests/support/test-id'
import { AT, commands, countedIds, engineOf, heldSurroundings } from './fresh-shop'
import { backupOf, fileOf } from './backup/backup-of'

const OPERATIONS = Number(process.env['STOCK_OPERATIONS'] ?? 200)

const SHAFTS = testId(501)
const VANES = testId(502)
const POSTS = testId(503)
const HEADS = testId(504)
const LOTS = [SHAFTS, VANES, POSTS, HEADS]
const PER_ARROW: Readonly<Record<Id, number>> = { [SHAFTS]: 1, [VANES]: 4, [POSTS]: 1, [HEADS]: 1 }
/** What of the arrow can no longer go back once this was done, by hand from page 1's route. */
const SPENDS: Readonly<Record<string, readonly Id[]>> = {
  c2c: [SHAFTS],
  fletch: [SHAFTS, VANES],
  trimWeight: [SHAFTS, POSTS],
  finishedWeight: LOTS,
}
const LOT_OF: Readonly<Record<string, Id>> = {
  'Heron 200': SHAFTS,
  'Broad vane 2.6': VANES,
  'Long post 158': POSTS,
  'Two-blade 250': HEADS,
}
const SHEET = (() => {
  const sheet = demoSheet({ targetGr: 785, c2cIn: 28, quantity: 2 })
  const nameOf = (id: Id) => sheet.parts.find((each) => each.id === id)?.part.name ?? ''
  return {
    ...sheet,
    plan: { ...sheet.plan, lines: sheet.plan.lines.map((l) => ({ ...l, lot: LOT_OF[nameOf(l.part)] ?? null })) },
  }
})()

/** A second bookkeeping, by increments, that knows nothing of records. */
class Ledger {
  readonly lots = new Map(LOTS.map((lot) => [lot, { onHand: 0, reserved: 0, used: 0, weighed: 0 }]))
  reserve(arrows: number) {
    for (const lot of LOTS) this.lots.get(lot)!.reserved += arrows * PER_ARROW[lot]!
  }
  spend(lot: Id) {
    const own = this.lots.get(lot)!
    own.reserved -= PER_ARROW[lot]!
    own.used += PER_ARROW[lot]!
    own.onHand -= PER_ARROW[lot]!
  }
}
interface Arrow {
  readonly id: Id
  readonly spent: Set<Id>
  scrapped: boolean
  readonly raw: { event: string; isOut: boolean }[]
}

function shopWith(seed: number) {
  const engine = engineOf()
  const held = heldSurroundings()
  const ids = countedIds(seed)
  const name = 'grainwright-test'
  const open = () => openRepository({ name, rules: VIEW_RULES, ids, surroundings: held.surroundings, engine })
  return { engine, ids, name, open, ...commands(ids) }
}
type Shop = ReturnType<typeof shopWith>

const readingOf = (point: DataPoint, value: number) => ({
  point,
  value,
  unit: DATA_POINTS[point].unit,
  raw: String(value),
  source: 'typed' as const,
  stable: true,
  attempt: 1,
  scale: 'Scale 1',
  takenAt: AT,
})

/** So many random operations of one shop, written and booked; the book is closed and opened again now and then. */
async function work(shop: Shop, ledger: Ledger, operations: number, seed: number): Promise<void> {
  const random = seeded(seed)
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)]!
  let repository = await shop.open()
  const jobs: { id: Id; arrows: Arrow[]; no: number }[] = []
  const commit = async (events: readonly EventDraft[], facts = {}) => {
    const receipt = await repository.commit(shop.command({ events, ...facts }))
    if (receipt.kind !== 'saved') throw new Error(receipt.detail)
    return receipt.events
  }
  for (let n = 0; n < operations; n++) {
    if (n % 97 === 96) {
      repository.close()
      repository = await shop.open()
    }
    const lot = pick(LOTS)
    const own = ledger.lots.get(lot)!
    const dice = random()
    if (dice < 0.2) {
      const why = pick(['received', 'counted', 'scrapped', 'used', 'returned'] as const)
      const by = (why === 'scrapped' || why === 'used' ? -1 : 1) * Math.floor(random() * 9)
      await commit([newEvent('stockMoved', { job: null }, { part: testId(1), lot, by, why })])
      own.onHand += by
      if (why === 'used') own.used -= by
      continue
    }
    if (dice < 0.3) {
      const body = { lot, weightGr: 7 + random(), pieces: 1, raw: '7', scale: 'Scale 1' }
      const [event] = await commit([newEvent('lotWeighed', { job: null }, body)])
      own.weighed += 1
      if (random() < 0.3) {
        const aside = { lot, target: event!.hash, reason: 'dropped' }
        await commit([newEvent('lotWeightSetAside', { job: null }, aside)])
        own.weighed -= 1
      }
      continue
    }
    if (dice < 0.38 || jobs.length === 0) {
      const id = shop.ids.id()
      const fact = newFact({ by: 'Ansa', at: AT }, 'sheet', id, { ...SHEET, job: id })
      const arrows = [1, 2].map((no) => ({ id: shop.ids.id(), no, code: `T/${no}` }))
      await commit(
        [
          newEvent('opened', { job: id }, { kind: 'order', of: null }),
          newEvent('frozen', { job: id }, { sheet: fact.hash, version: 1 }),
        ],
        { facts: [fact] },
      )
      ledger.reserve(2)
      await commit([newEvent('setStarted', { job: id }, { sheet: fact.hash, arrows })])
      jobs.push({ id, no: 2, arrows: arrows.map((a) => ({ id: a.id, spent: new Set(), scrapped: false, raw: [] })) })
      continue
    }
    const job = pick(jobs)
    const arrow = pick(job.arrows)
    if (arrow.scrapped) continue
    const about = { job: job.id, arrow: arrow.id }
    if (dice < 0.48) {
      await commit([newEvent('scrapped', about, { cause: 'split' })])
      arrow.scrapped = true
      for (const each of LOTS) {
        if (!arrow.spent.has(each)) ledger.lots.get(each)!.reserved -= PER_ARROW[each]!
      }
      if (random() < 0.5) {
        job.no += 1
        const made = { arrow: shop.ids.id(), no: job.no, code: `T/${job.no}`, replaces: arrow.id }
        await commit([newEvent('replaced', { job: job.id }, made)])
        job.arrows.push({ id: made.arrow, spent: new Set(), scrapped: false, raw: [] })
        ledger.reserve(1)
      }
      continue
    }
    if (dice < 0.6) {
      const before = arrow.raw.find((each) => !each.isOut)
      if (before === undefined) {
        const [event] = await commit([
          newEvent('read', about, { step: 'receive', reading: readingOf('rawWeight', 377) }),
        ])
        arrow.raw.push({ event: event!.hash, isOut: false })
        ledger.lots.get(SHAFTS)!.weighed += 1
      } else {
        const body = { target: before.event, reading: null, reason: 'wrong shaft' }
        await commit([newEvent('corrected', about, body)])
        before.isOut = true
        ledger.lots.get(SHAFTS)!.weighed -= 1
      }
      continue
    }
    const sign = pick(Object.keys(SPENDS))
    await commit([
      sign === 'fletch'
        ? newEvent('confirmed', about, { step: 'fletch' })
        : newEvent('read', about, { step: 'x', reading: readingOf(sign as DataPoint, 28) }),
    ])
    for (const each of SPENDS[sign]!) {
      if (!arrow.spent.has(each)) ledger.spend(each)
      arrow.spent.add(each)
    }
  }
  repository.close()
}

async function figuresOf(shop: Shop) {
  const repository = await shop.open()
  const views = await Promise.all(LOTS.map((lot) => repository.lotView(lot)))
  repository.close()
  return new Map(
    LOTS.map((lot, i) => {
      const view = views[i]
      const { onHand = 0, reserved = 0, used = 0, weighed = [] } = view ?? {}
      return [lot, { onHand, reserved, used, weighed: weighed.filter(({ what }) => what === 'weight').length }]
    }),
  )
}
async function allViews(shop: Shop) {
  const book = new Book(shop.name, shop.engine)
  await book.open()
  const views = await book.lotView.toArray()
  book.close()
  return views.toSorted((a, b) => (a.id < b.id ? -1 : 1))
}

describe('stock', () => {
  it('is the same by a second bookkeeping, after reloads, after a merge of two books, and rebuilt from the events', {
    timeout: 3_600_000,
  }, async () => {
    const [here, there] = [shopWith(31), shopWith(32)]
    const [mine, theirs] = [new Ledger(), new Ledger()]
    await work(here, mine, Math.floor(OPERATIONS / 2), 1)
    await work(there, theirs, Math.floor(OPERATIONS / 2), 2)
    expect(await figuresOf(here)).toEqual(mine.lots)
    expect(await figuresOf(there)).toEqual(theirs.lots)

    const [ours, other] = [await here.open(), await there.open()]
    const [fromHere, fromThere] = [await backupOf(ours), await backupOf(other)]
    for (const [repository, file] of [
      [ours, fromThere],
      [other, fromHere],
    ] as const) {
      await repository.archive.stage(fileOf(file))
      expect(await repository.archive.addStaged()).toMatchObject({ kind: 'saved' })
      repository.close()
    }
    const both = new Map(
      LOTS.map((lot) => {
        const [a, b] = [mine.lots.get(lot)!, theirs.lots.get(lot)!]
        const sum = (key: keyof typeof a) => a[key] + b[key]
        return [lot, { onHand: sum('onHand'), reserved: sum('reserved'), used: sum('used'), weighed: sum('weighed') }]
      }),
    )
    expect(await figuresOf(here)).toEqual(both)
    const merged = await allViews(here)
    expect(await allViews(there)).toEqual(merged)

    const book = new Book(here.name, here.engine)
    await book.open()
    await book.transaction('rw', book.tables, async () => rebuildAllViews(book, VIEW_RULES as unknown as ViewRules))
    book.close()
    expect(await allViews(here)).toEqual(merged)
  })
})
