import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Receipt } from '@/domain/ports'
import { newEvent } from '@/domain/records/write'
import { createAppStore } from '@/state/app-store'
import { openRepository } from '@/storage/open-repository'
import { countedIds, heldSurroundings } from '@tests/storage/fresh-shop'

let minute = 0
const clock = { now: () => new Date(Date.UTC(2031, 4, 4, 9, (minute += 1))).toISOString() }

/** A store over a book that refuses as long as it is told to. */
async function storeThatFails() {
  const ids = countedIds(78)
  const engine = { indexedDB: new IDBFactory(), IDBKeyRange }
  const { surroundings } = heldSurroundings()
  const disk = { works: true }
  const store = createAppStore({
    clock,
    ids,
    memory: { recall: () => null, keep: () => {} },
    open: async (book) => {
      const repository = await openRepository({ name: book, rules: VIEW_RULES, ids, surroundings, engine })
      const refused = (command: string): Receipt => ({ kind: 'not-saved', command, why: 'timeout', detail: 'planted' })
      return {
        ...repository,
        commit: (command) => (disk.works ? repository.commit(command) : Promise.resolve(refused(command.id))),
      }
    },
    openScale: () => Promise.reject(new Error('none')),
    openSearcher: () => Promise.reject(new Error('none')),
    benches: () => ({ hold: () => Promise.resolve(undefined) }),
  })
  await store.getState().start('shop')
  const job = (await store.getState().newJob('order'))!
  await store.getState().loadJob(job)
  const read = (point: 'rawWeight' | 'cutWeight', value: number) => {
    const reading = {
      point,
      value,
      unit: 'gr' as const,
      raw: `${value}`,
      source: 'typed' as const,
      stable: true,
      attempt: 1,
      scale: 'Scale 1',
      takenAt: store.getState().now(),
    }
    return store.getState().write(() => ({ events: [newEvent('read', { job }, { step: 'weigh', reading })] }))
  }
  const values = () =>
    store.getState().open!.events.flatMap((event) => (event.what === 'read' ? [event.body.reading.value] : []))
  const waiting = () => {
    const { save } = store.getState()
    return save.kind === 'not saved' ? save.commands.length : 0
  }
  return { store, disk, read, values, waiting }
}

it('keeps each thing that was not saved in sight, whatever goes well after it, and saves them in their order', async () => {
  const { store, disk, read, values, waiting } = await storeThatFails()
  disk.works = false
  expect(await read('rawWeight', 401.2)).toBe(false)
  expect(await read('cutWeight', 344.1)).toBe(false)
  expect(waiting()).toBe(2)

  disk.works = true
  await read('rawWeight', 402)
  expect(waiting()).toBe(2)
  expect(values()).toEqual([402])

  expect(await store.getState().saveAgain()).toBe(true)
  expect(values()).toEqual([402, 401.2, 344.1])
  expect(store.getState().save.kind).toBe('saved')
})

it('takes a reading once that was taken twice as it was not saved', async () => {
  const { store, disk, read, values, waiting } = await storeThatFails()
  disk.works = false
  await read('rawWeight', 401.2)
  await read('rawWeight', 401.2)
  expect(waiting()).toBe(1)
  await read('rawWeight', 401.3)
  expect(waiting()).toBe(2)

  disk.works = true
  await store.getState().saveAgain()
  expect(values()).toEqual([401.2, 401.3])
})

it('stops at the first that fails again, and keeps the rest', async () => {
  const { store, disk, read, waiting } = await storeThatFails()
  disk.works = false
  await read('rawWeight', 401.2)
  await read('cutWeight', 344.1)
  expect(await store.getState().saveAgain()).toBe(false)
  expect(waiting()).toBe(2)
})

it('forgets them with the book', async () => {
  const { store, disk, read, waiting } = await storeThatFails()
  disk.works = false
  await read('rawWeight', 401.2)
  store.getState().leave()
  expect(store.getState().save).toEqual({ kind: 'idle' })
  disk.works = true
  await store.getState().start('demo')
  expect(waiting()).toBe(0)
})
