import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Change, Receipt } from '@/domain/ports'
import { newEvent } from '@/domain/records/write'
import { createAppStore } from '@/state/app-store'
import { isAboutForgotten } from '@/state/unsaved'
import { openRepository } from '@/storage/open-repository'
import { countedIds, heldSurroundings } from '@tests/storage/fresh-shop'

let minute = 0
const clock = { now: () => new Date(Date.UTC(2031, 4, 4, 9, (minute += 1))).toISOString() }

type Disk = 'works' | 'refuses' | 'answers too late' | 'hangs' | 'waits'

/** A store over a book whose disk does as it is told. */
async function storeThatFails() {
  const ids = countedIds(78)
  const engine = { indexedDB: new IDBFactory(), IDBKeyRange }
  const { surroundings } = heldSurroundings()
  const disk: { now: Disk; letGo?: () => void; tell?: (change: Change) => void } = { now: 'works' }
  const store = createAppStore({
    clock,
    ids,
    memory: { recall: () => null, keep: () => {} },
    open: async (book) => {
      const repository = await openRepository({ name: book, rules: VIEW_RULES, ids, surroundings, engine })
      const refused = (command: string): Receipt => ({ kind: 'not-saved', command, why: 'timeout', detail: 'planted' })
      return {
        ...repository,
        watch(watcher) {
          disk.tell = (change) => watcher.change?.(change as Parameters<typeof watcher.change>[0], 'another tab')
          return repository.watch(watcher)
        },
        async commit(command) {
          if (disk.now === 'waits') await new Promise<void>((go) => (disk.letGo = go))
          if (disk.now === 'works') return repository.commit(command)
          if (disk.now === 'answers too late') await repository.commit(command)
          if (disk.now === 'hangs') await new Promise<void>((go) => (disk.letGo = go))
          return refused(command.id)
        },
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
  const valueOf = (event: { readonly what: string; readonly body: unknown }) =>
    event.what === 'read' ? [(event.body as { reading: { value: number } }).reading.value] : []
  const saved = () => store.getState().open!.events.flatMap(valueOf)
  const waiting = () =>
    (store.getState().notSaved?.commands ?? []).flatMap(({ events = [] }) => events.flatMap(valueOf))
  return { store, ids, job, disk, read, saved, waiting }
}

it('keeps each thing that was not saved in sight, and saves it before anything newer', async () => {
  const { store, disk, read, saved, waiting } = await storeThatFails()
  disk.now = 'refuses'
  expect(await read('rawWeight', 401.2)).toBe(false)
  expect(await read('cutWeight', 344.1)).toBe(false)
  expect(waiting()).toEqual([401.2, 344.1])
  expect(store.getState().save.kind).toBe('not saved')

  disk.now = 'works'
  expect(await read('rawWeight', 402)).toBe(true)
  expect(saved()).toEqual([401.2, 344.1, 402])
  expect(waiting()).toEqual([])
  expect(store.getState().save.kind).toBe('saved')
})

it('keeps the order of their asking, however often they fail again', async () => {
  const { store, disk, read, saved, waiting } = await storeThatFails()
  disk.now = 'refuses'
  await read('rawWeight', 401.2)
  await read('cutWeight', 344.1)
  expect(await store.getState().saveAgain()).toBe(false)
  expect(await store.getState().saveAgain()).toBe(false)
  expect(waiting()).toEqual([401.2, 344.1])
  disk.now = 'works'
  expect(await store.getState().saveAgain()).toBe(true)
  expect(saved()).toEqual([401.2, 344.1])
})

it('finds out of one that answered too late that it arrived, also when its reading was taken once more', async () => {
  const { disk, read, saved, waiting } = await storeThatFails()
  disk.now = 'answers too late'
  await read('rawWeight', 401.2)
  disk.now = 'refuses'
  await read('rawWeight', 401.2)
  expect(waiting()).toEqual([401.2])
  disk.now = 'works'
  await read('cutWeight', 344.1)
  expect(saved()).toEqual([401.2, 344.1])
})

it('takes two that are alike and no reading of one arrow for two: pieces of a lot may weigh the same', async () => {
  const { store, ids, disk } = await storeThatFails()
  const [part, lot] = [ids.id(), ids.id()]
  const moved = () => newEvent('stockMoved', { job: null }, { part, lot, by: -1, why: 'scrapped' })
  disk.now = 'refuses'
  for (let n = 0; n < 3; n++) await store.getState().write(() => ({ events: [moved()] }))
  expect(store.getState().notSaved?.commands).toHaveLength(3)
})

it('lets go of what was not saved of somebody who was forgotten in another tab', async () => {
  const { store, ids, job, disk, read, waiting } = await storeThatFails()
  const { repository, note } = store.getState()
  disk.now = 'refuses'
  await store.getState().write(() => {
    const said = note('rings in the evening')
    return { events: [newEvent('noted', { job }, { step: 'call', note: said.hash })], personal: [said] }
  })
  await read('rawWeight', 401.2)
  const change = { jobs: [job], subjects: [ids.id()], lots: [], forgotten: true } as const
  expect([...(store.getState().notSaved?.commands ?? [])].filter(isAboutForgotten(change))).toHaveLength(1)
  expect(isAboutForgotten({ ...change, jobs: [] })(store.getState().notSaved!.commands[0]!)).toBe(false)
  expect(waiting()).toEqual([401.2])
  expect(repository).not.toBeNull()
})

it('does not give what waits of somebody who is forgotten while earlier ones are being given', async () => {
  const { store, ids, job, disk, read, saved } = await storeThatFails()
  disk.now = 'refuses'
  await read('rawWeight', 401.2)
  const { note } = store.getState()
  const said = note('rings in the evening')
  await store.getState().write(() => ({
    events: [newEvent('noted', { job }, { step: 'call', note: said.hash })],
    personal: [said],
  }))
  await read('cutWeight', 344.1)
  expect(store.getState().notSaved?.commands).toHaveLength(3)

  disk.now = 'waits'
  const giving = store.getState().saveAgain()
  await expect.poll(() => disk.letGo).toBeDefined()
  disk.tell!({ jobs: [job], subjects: [ids.id()], lots: [], forgotten: true })
  disk.now = 'works'
  disk.letGo!()
  expect(await giving).toBe(true)
  expect(saved()).toEqual([401.2, 344.1])
  expect(store.getState().open!.events.map(({ what }) => what)).not.toContain('noted')
  expect(await store.getState().repository!.personal(said.hash)).toBeUndefined()
})

it('writes nothing into a book that it was not asked of', async () => {
  const { store, disk, read } = await storeThatFails()
  disk.now = 'hangs'
  const answer = read('rawWeight', 401.2)
  const behind = read('cutWeight', 344.1)
  await expect.poll(() => disk.letGo).toBeDefined()
  store.getState().leave()
  await store.getState().start('demo')
  disk.now = 'works'
  disk.letGo!()
  expect(await answer).toBe(false)
  expect(await behind).toBe(false)
  expect(store.getState().notSaved).toBeNull()
  expect(await store.getState().repository!.tally()).toMatchObject({ events: 0 })
})

it('does not say that it is saving for ever when what it stands on cannot be read', async () => {
  const { store } = await storeThatFails()
  const failing = store.getState().writeFrom(
    () => Promise.reject(new Error('the database is closed')),
    () => ({ events: [] }),
  )
  await expect(failing).rejects.toThrow('the database is closed')
  expect(store.getState().save.kind).toBe('idle')
})
