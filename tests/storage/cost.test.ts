/** What a builder waits for must not grow with the book: counted in calls and rows, which no machine makes slower. */
import { describe, expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Id } from '@/domain/records/scalars'
import { newEvent, newFact } from '@/domain/records/write'
import { openRepository } from '@/storage/open-repository'
import { DEMO_PARTS } from '@/demo/demo-parts'
import type { AppRepository } from '@/state/app-repository'
import { createAppStore } from '@/state/app-store'
import { demoSheet } from '@tests/support/demo-sheet'
import { AT, commands, countedIds, engineOf, heldSurroundings } from './fresh-shop'
import { countWork } from './count-work'

async function shopOf(seed: number) {
  const ids = countedIds(seed)
  const engine = engineOf()
  const { surroundings } = heldSurroundings()
  const open = () => openRepository({ name: 'grainwright-test', rules: VIEW_RULES, ids, surroundings, engine })
  return { ids, open, repository: await open(), ...commands(ids) }
}
type Shop = Awaited<ReturnType<typeof shopOf>>

/** An order with a frozen sheet and a set of six at the bench. */
async function startSet(shop: Shop): Promise<{ readonly job: Id; readonly arrow: Id }> {
  const job = shop.ids.id()
  const sheet = newFact({ by: 'Ansa', at: AT }, 'sheet', job, { ...demoSheet({ targetGr: 785, c2cIn: 28 }), job })
  const arrows = Array.from({ length: 6 }, (_, i) => ({ id: shop.ids.id(), no: i + 1, code: `T/${i + 1}` }))
  const events = [
    newEvent('opened', { job }, { kind: 'order', of: null }),
    newEvent('frozen', { job }, { sheet: sheet.hash, version: 1 }),
    newEvent('setStarted', { job }, { sheet: sheet.hash, arrows }),
  ]
  await shop.repository.commit(shop.command({ events, facts: [sheet] }))
  return { job, arrow: arrows[0]!.id }
}

/** So many jobs in one command; every other is for moose. */
async function openJobs(shop: Shop, jobs: number): Promise<void> {
  const events = Array.from({ length: jobs }, (_, i) => {
    const job = shop.ids.id()
    const quarry = i % 2 === 0 ? 'moose' : 'bison'
    return [
      newEvent('opened', { job }, { kind: 'order', of: null }),
      newEvent('answered', { job }, { question: 'quarry', answer: { value: quarry, how: 'told' } }),
    ]
  })
  await shop.repository.commit(shop.command({ events: events.flat() }))
}

describe('a save', () => {
  it('asks the same of the database after three hundred readings as after three, and reads none of them again', async () => {
    const shop = await shopOf(901)
    const { job, arrow } = await startSet(shop)
    const read = (n: number) => shop.repository.commit(shop.read(job, arrow, 400 + n / 10))
    for (let n = 0; n < 3; n++) await read(n)
    const early = await countWork(() => read(3))
    for (let n = 4; n < 300; n++) await read(n)
    const late = await countWork(() => read(300))
    expect(late).toEqual(early)
    // The book about itself, in one call; then the event and the tally.
    expect(late).toEqual({ calls: 3, rows: 2, writes: 2 })
  })
})

describe('a search', () => {
  it('reads no more rows than one page, however many jobs share the word, and says how many there are', async () => {
    const shop = await shopOf(902)
    await openJobs(shop, 300)
    const asked = () => shop.repository.findJobs(['moo', 'order'], 50)
    expect(await countWork(asked)).toEqual({ calls: 52, rows: 50, writes: 0 })
    const { jobs, of } = await asked()
    expect(of).toBe(150)
    expect(jobs.map(({ id }) => id)).toEqual(jobs.map(({ id }) => id).toSorted((a, b) => (a > b ? -1 : 1)))
  })
})

/** The store as the app makes it. */
const storeOf = (repository: AppRepository) =>
  createAppStore({
    clock: { now: () => AT },
    ids: countedIds(907),
    memory: { recall: () => null, keep: () => {} },
    open: () => Promise.resolve(repository),
    openScale: () => Promise.reject(new Error('no scale here')),
    openSearcher: () => Promise.reject(new Error('no search here')),
    benches: () => ({ hold: () => Promise.resolve(undefined) }),
  })

/** Three parts, of which so many lots were received and used up; of the first two another lies on the shelf. */
async function spendLots(shop: Shop, lots: number): Promise<void> {
  const parts = DEMO_PARTS.slice(0, 3).map((part) => newFact({ by: 'Ansa', at: AT }, 'part', shop.ids.id(), part))
  await shop.repository.commit(shop.command({ facts: parts }))
  for (let n = 0; n <= lots; n++) {
    const made = parts.slice(0, n === lots ? 2 : 3).map(({ subject: part }) => {
      const body = { part, code: `L${n}`, receivedOn: '2031-05-04', received: 12, numbered: [] }
      const lot = newFact({ by: 'Ansa', at: AT }, 'lot', shop.ids.id(), body)
      const moved = (by: number, why: 'received' | 'scrapped') =>
        newEvent('stockMoved', { job: null }, { part, lot: lot.subject, by, why })
      return { lot, events: [moved(12, 'received'), ...(n === lots ? [] : [moved(-12, 'scrapped')])] }
    })
    const facts = made.map(({ lot }) => lot)
    await shop.repository.commit(shop.command({ facts, events: made.flatMap(({ events }) => events) }))
  }
}

describe('opening', () => {
  const opening = async (jobs: number, lots: number) => {
    const shop = await shopOf(903)
    await openJobs(shop, jobs)
    await spendLots(shop, lots)
    shop.repository.close()
    let lotsRead = 0
    const work = await countWork(async () => {
      const repository = await shop.open()
      const store = storeOf(repository)
      await store.getState().start('shop')
      lotsRead = store.getState().shelf.lots.size
      repository.close()
    })
    return { ...work, lotsRead }
  }

  it('asks the same of a book of 210 jobs and of one of 420', async () => {
    expect(await opening(420, 1)).toEqual(await opening(210, 1))
  })

  it('reads the lots in stock, and the newest of a part that has none, however many were used up before', async () => {
    const few = await opening(3, 2)
    expect(few.lotsRead).toBe(3)
    expect(await opening(3, 40)).toEqual(few)
  })
})
