/** A fresh log is begun before anything is written. That it keeps a book alive is shown by `tests/durability/torn-log.ts`. */
import { describe, expect, it, vi } from 'vitest'
import { newEvent } from '@/domain/records/write'
import { freshLog } from '@/storage/fresh-log'
import { AT, countedIds, engineOf, freshShop, heldSurroundings } from './fresh-shop'

/** Fresh logs that are begun when the test says so, the oldest first. */
function heldLogs() {
  const held = heldSurroundings()
  const asked: (() => void)[] = []
  const freshLog = () => new Promise<void>((done) => asked.push(done))
  return { asked, go: () => asked.shift()!(), held: { ...held, surroundings: { ...held.surroundings, freshLog } } }
}
const ids = countedIds(77)
const opening = () => {
  const job = ids.id()
  const events = [newEvent('opened', { job }, { kind: 'order', of: null })]
  return { id: ids.id(), by: 'Ansa', at: AT, events }
}
const turns = () => new Promise((go) => setTimeout(go, 20))
/** Whether a promise is settled some turns later. */
async function isSettled(promise: Promise<unknown>): Promise<boolean> {
  let settled = false
  void promise.then(() => (settled = true))
  await turns()
  return settled
}

describe('a fresh log', () => {
  it('is waited for by a save, and by neither opening nor reading', async () => {
    const { go, held } = heldLogs()
    const { repository } = await freshShop({ held })
    expect(await repository.jobViews()).toEqual([])
    const saving = repository.commit(opening())
    expect(await isSettled(saving)).toBe(false)
    go()
    expect((await saving).kind).toBe('saved')
  })

  it('is waited for before what is missing is brought back from the second copy', async () => {
    const { go, held } = heldLogs()
    held.remembered.set('grainwright-test', { tally: { facts: 3, events: 9, head: { log: 'l', seq: 9, hash: 'h' } } })
    const shop = freshShop({ held })
    expect(await isSettled(shop)).toBe(false)
    go()
    expect((await shop).repository.state().kind).toBe('missing')
  })

  it('is begun in a rescue between removing the book and founding it anew', async () => {
    const { asked, go, held } = heldLogs()
    const engine = engineOf()
    const { repository } = await freshShop({ held, engine })
    go()
    await repository.commit(opening())
    const recovering = repository.archive.recover()
    await expect.poll(() => asked.length).toBe(1)
    expect(await engine.indexedDB.databases()).toEqual([])
    expect(await isSettled(recovering)).toBe(false)
    expect(await engine.indexedDB.databases()).toEqual([])
    go()
    expect((await recovering).kind).toBe('recovered')
    expect(await repository.tally()).toMatchObject({ events: 1 })
  })

  it('is begun again before the browser’s own is full, between two saves', async () => {
    const { asked, go, held } = heldLogs()
    const { repository, read } = await freshShop({ held })
    go()
    const { id, events } = opening()
    await repository.commit({ id, by: 'Ansa', at: AT, events })
    const [{ job }] = events as unknown as [{ job: string }]
    let saves = 1
    for (; asked.length === 0 && saves < 1000; saves++) await repository.commit(read(job, ids.id(), 400 + saves / 10))
    expect(saves).toBe(250)
    const next = repository.commit(read(job, ids.id(), 500))
    expect(await isSettled(next)).toBe(false)
    go()
    expect((await next).kind).toBe('saved')
    expect(asked).toHaveLength(0)
  })

  it('is waited for before a command that fills a log by itself is said to be saved', async () => {
    const { asked, go, held } = heldLogs()
    const { repository } = await freshShop({ held })
    go()
    const many = Array.from({ length: 250 }, () => opening().events).flat()
    const saving = repository.commit({ id: ids.id(), by: 'Ansa', at: AT, events: many })
    await expect.poll(() => asked.length).toBe(1)
    expect(await isSettled(saving)).toBe(false)
    go()
    expect((await saving).kind).toBe('saved')
  })

  it('leaves a save that waited for it unwritten when the book is closed meanwhile, and the book whole', async () => {
    const { go, held } = heldLogs()
    const { repository } = await freshShop({ held })
    const saving = repository.commit(opening())
    repository.close()
    go()
    expect(await saving).toMatchObject({ kind: 'not-saved', why: 'closed' })
    expect(held.remembered.get('grainwright-test')?.failed).toBeUndefined()
  })
})

const ROOMY = { hasRoom: () => Promise.resolve(true) }

describe('beginning one', () => {
  it('writes nothing where there is no room', async () => {
    const engine = engineOf()
    let asked = 0
    engine.indexedDB.open = () => {
      asked += 1
      throw new Error('nothing was to be opened')
    }
    await freshLog('grainwright-test', { hasRoom: () => Promise.resolve(false) }, engine)
    expect(asked).toBe(0)
    await freshLog('grainwright-test', ROOMY, engine)
    expect(asked).toBe(1)
  })

  it('leaves no database behind', async () => {
    const engine = engineOf()
    const made: string[] = []
    const open = engine.indexedDB.open.bind(engine.indexedDB)
    engine.indexedDB.open = (name, version) => {
      made.push(name)
      return open(name, version)
    }
    await freshLog('grainwright-test', ROOMY, engine)
    expect(made).toContain('grainwright-test-fresh-log')
    expect(await engine.indexedDB.databases()).toEqual([])
  })
  it('is over some time after the browser has said that its database is deleted, and not before', async () => {
    const begun = freshLog('grainwright-test', ROOMY, engineOf())
    expect(await isSettled(begun)).toBe(false)
    await new Promise((go) => setTimeout(go, 60))
    expect(await isSettled(begun)).toBe(false)
    await begun
  })

  it('is given up after a second where the browser does not answer, and where it refuses', async () => {
    const silent = engineOf()
    silent.indexedDB.open = () => new EventTarget() as IDBOpenDBRequest
    const withheld = engineOf()
    withheld.indexedDB.open = () => {
      throw new DOMException('withheld', 'SecurityError')
    }
    await expect(freshLog('b', ROOMY, withheld)).resolves.toBeUndefined()
    vi.useFakeTimers({ toFake: ['setTimeout'] })
    try {
      let isOver = false
      void freshLog('a', ROOMY, silent).then(() => (isOver = true))
      await vi.advanceTimersByTimeAsync(999)
      expect(isOver).toBe(false)
      await vi.advanceTimersByTimeAsync(1)
      expect(isOver).toBe(true)
    } finally {
      vi.useRealTimers()
    }
  })
})
