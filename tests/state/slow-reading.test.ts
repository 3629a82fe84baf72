/** What was read before a save and comes after it must not put back what stood before. */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { describe, expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import { newEvent } from '@/domain/records/write'
import type { AppRepository } from '@/state/app-repository'
import { createAppStore } from '@/state/app-store'
import { openRepository } from '@/storage/open-repository'
import { countedIds, heldSurroundings } from '@tests/storage/fresh-shop'

type Reading = 'eventsOfJob' | 'jobViews' | 'lotViews'

/** A shop whose next reading of one kind ends only when it is let go. */
async function slowShop() {
  const ids = countedIds(78)
  const engine = { indexedDB: new IDBFactory(), IDBKeyRange }
  const { surroundings } = heldSurroundings()
  let held: { readonly reading: Reading; readonly gate: Promise<void> } | undefined
  const store = createAppStore({
    clock: { now: () => '2031-05-04T09:30:00.000Z' },
    ids,
    memory: { recall: () => null, keep: () => {} },
    async open(book) {
      const repository = await openRepository({ name: book, rules: VIEW_RULES, ids, surroundings, engine })
      return new Proxy<AppRepository>(repository, {
        get(target, name: keyof AppRepository) {
          const method = target[name] as ((...args: unknown[]) => unknown) | undefined
          if (method === undefined || held === undefined || name !== held.reading) return method?.bind(target)
          const { gate } = held
          held = undefined
          return async (...args: unknown[]) => {
            const read = await method.apply(target, args)
            await gate
            return read
          }
        },
      })
    },
    openScale: () => Promise.reject(new Error('none')),
    openSearcher: () => Promise.reject(new Error('none')),
    benches: () => ({ hold: () => Promise.resolve(undefined) }),
  })
  const hold = (reading: Reading): (() => void) => {
    let release = () => {}
    held = { reading, gate: new Promise((done) => (release = done)) }
    return release
  }
  await store.getState().start('shop')
  const newJob = async () => (await store.getState().newJob('order'))!
  return { store, hold, newJob }
}

/** Long enough for what is not made to wait to be over. */
const others = () => new Promise((done) => setTimeout(done, 50))

const answered = (job: string) =>
  newEvent('answered', { job }, { question: 'quarry', answer: { value: 'moose', how: 'told' } })

describe('a slow reading', () => {
  it('of the open job does not take back an answer given meanwhile', async () => {
    const { store, hold, newJob } = await slowShop()
    const job = await newJob()
    await store.getState().loadJob(job)
    const release = hold('eventsOfJob')
    const again = store.getState().reloadJob(job)
    const saved = store.getState().write(() => ({ events: [answered(job)] }))
    await others()
    release()
    await Promise.all([again, saved])
    expect(store.getState().open?.job.answers.quarry).toMatchObject({ value: 'moose' })
  })

  it('of the open job lets nothing say Saved while a command waits behind it', async () => {
    const { store, hold, newJob } = await slowShop()
    const job = await newJob()
    await store.getState().loadJob(job)
    expect(store.getState().save.kind).toBe('saved')
    const release = hold('eventsOfJob')
    const again = store.getState().reloadJob(job)
    const first = store.getState().write(() => ({ events: [answered(job)] }))
    const second = store.getState().write(() => ({ events: [answered(job)] }))
    expect(store.getState().save.kind).toBe('saving')
    release()
    await Promise.all([again, first])
    expect(store.getState().save.kind).toBe('saving')
    await second
    expect(store.getState().save.kind).toBe('saved')
  })

  it('of one job does not come in place of the job opened after it', async () => {
    const { store, hold, newJob } = await slowShop()
    const [first, second] = [await newJob(), await newJob()]
    const release = hold('eventsOfJob')
    const slow = store.getState().loadJob(first)
    const next = store.getState().loadJob(second)
    await others()
    release()
    await Promise.all([slow, next])
    expect(store.getState().open?.job.id).toBe(second)
    await store.getState().reloadJob(first)
    expect(store.getState().open?.job.id).toBe(second)
  })

  it('of the list of jobs does not lose a job opened meanwhile', async () => {
    const { store, hold, newJob } = await slowShop()
    const release = hold('jobViews')
    const slow = store.getState().refreshJobs()
    const job = await newJob()
    await others()
    release()
    await slow
    expect(store.getState().jobs.map(({ id }) => id)).toEqual([job])
  })

  it('of the shelf does not lose a lot read meanwhile', async () => {
    const { store, hold } = await slowShop()
    const release = hold('lotViews')
    const slow = store.getState().refreshShelf()
    const lot = '01890000-0000-7000-8000-0000000000aa'
    const event = newEvent('lotWeighed', { job: null }, { lot, weightGr: 7.1, pieces: 1, raw: '7.1', scale: 'Scale 1' })
    await store.getState().write(() => ({ events: [event] }))
    await others()
    release()
    await slow
    await store.getState().refreshLots([])
    expect(store.getState().shelf.lotViews.get(lot)).toMatchObject({ weighed: [{ weightGr: 7.1 }] })
  })
})
