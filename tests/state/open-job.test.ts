/** The open job is brought up to date with what was written; it must be what reading it anew gives. */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { describe, expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import type { Id } from '@/domain/records/scalars'
import { createAppStore } from '@/state/app-store'
import { openJob } from '@/state/open-job'
import { openRepository } from '@/storage/open-repository'
import { countedIds, heldSurroundings } from '@tests/storage/fresh-shop'

let minute = 0
const clock = { now: () => new Date(Date.UTC(2031, 4, 4, 9, (minute += 1))).toISOString() }

async function storeWithJob() {
  const ids = countedIds(77)
  const engine = { indexedDB: new IDBFactory(), IDBKeyRange }
  const { surroundings } = heldSurroundings()
  const store = createAppStore({
    clock,
    ids,
    memory: { recall: () => null, keep: () => {} },
    open: (book) => openRepository({ name: book, rules: VIEW_RULES, ids, surroundings, engine }),
    openScale: () => Promise.reject(new Error('none')),
    openSearcher: () => Promise.reject(new Error('none')),
    benches: () => ({ hold: () => Promise.resolve(undefined) }),
  })
  await store.getState().start('shop')
  const job = (await store.getState().newJob('order'))!
  await store.getState().loadJob(job)
  return { store, job, ids }
}

describe('the open job', () => {
  it('is after each write what reading it anew gives, a client, notes and answers among them', async () => {
    const { store, job, ids } = await storeWithJob()
    const client = ids.id()
    const write = async (...events: readonly EventDraft[]) => {
      await store.getState().write(() => ({ events }))
      const { open, repository } = store.getState()
      expect(open).toEqual(await openJob(repository!, job))
    }
    await write(newEvent('answered', { job }, { question: 'quarry', answer: { value: 'moose', how: 'told' } }))
    await write(newEvent('clientSet', { job }, { client }))
    await write(newEvent('planSet', { job }, { field: 'targetGr', value: 785 }))
    await store.getState().write(() => {
      const note = store.getState().note('rings in the evening')
      return { events: [newEvent('noted', { job }, { step: 'call', note: note.hash })], personal: [note] }
    })
    expect([...store.getState().open!.notes.values()]).toEqual(['rings in the evening'])
    await write(newEvent('answered', { job }, { question: 'quarry', answer: { cleared: true } }))
    expect(store.getState().open!.events).toHaveLength(6)
  })

  it('and the list of jobs say so before the save is called saved', async () => {
    const { store, job } = await storeWithJob()
    const seen: (string | undefined)[] = []
    store.subscribe(({ save, open }) => {
      if (save.kind === 'saved') seen.push(open?.job.plan.targetGr?.toString())
    })
    await store.getState().write(() => ({ events: [newEvent('planSet', { job }, { field: 'targetGr', value: 650 })] }))
    expect(seen[0]).toBe('650')
    await expect.poll(() => store.getState().jobs.find(({ id }: { id: Id }) => id === job)?.targetGr).toBe(650)
  })
})
