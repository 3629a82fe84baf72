/** What a builder waits for must not grow with the book: counted in calls and rows, which no machine makes slower. */
import { describe, expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Id } from '@/domain/records/scalars'
import { newEvent, newFact } from '@/domain/records/write'
import { openRepository } from '@/storage/open-repository'
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
    // Three rows of the book about itself; the event, the tally, the job's row.
    expect(late).toEqual({ calls: 7, rows: 2, writes: 3 })
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

describe('opening', () => {
  it('asks the same of a book of 210 jobs and of one of 420', async () => {
    const opening = async (jobs: number) => {
      const shop = await shopOf(903)
      await openJobs(shop, jobs)
      shop.repository.close()
      return countWork(async () => {
        const repository = await shop.open()
        await Promise.all([repository.jobViews(200), repository.backupState(), repository.lotViews()])
        repository.close()
      })
    }
    expect(await opening(420)).toEqual(await opening(210))
  })
})
