/** A fresh log is begun before anything is written. That it keeps a book alive is shown by `tests/durability/torn-log.ts`. */
import { describe, expect, it, vi } from 'vitest'
import { newEvent } from '@/domain/records/write'
import { freshLog } from '@/storage/fresh-log'
import { countedIds, engineOf, freshShop, heldSurroundings } from './fresh-shop'

/** A fresh log that is begun when the test says so. */
function heldLog() {
  const held = heldSurroundings()
  let go = () => {}
  const ready = new Promise<void>((done) => (go = done))
  return { go, held: { ...held, surroundings: { ...held.surroundings, freshLog: () => ready } } }
}
const opened = (job: string) => newEvent('opened', { job }, { kind: 'order', of: null })
const turns = () => new Promise((go) => setTimeout(go, 20))

describe('a fresh log', () => {
  it('is waited for by a save, and by neither opening nor reading', async () => {
    const { go, held } = heldLog()
    const shop = await freshShop({ held })
    expect(await shop.repository.jobViews()).toEqual([])
    const ids = countedIds(77)
    const command = { id: ids.id(), by: 'Ansa', at: '2031-05-04T09:30:00.000Z', events: [opened(ids.id())] }
    let isSaved = false
    const saving = shop.repository.commit(command).then((receipt) => {
      isSaved = true
      return receipt
    })
    await turns()
    expect(isSaved).toBe(false)
    go()
    expect((await saving).kind).toBe('saved')
  })
  it('is waited for before what is missing is brought back from the second copy', async () => {
    const { go, held } = heldLog()
    held.remembered.set('grainwright-test', { tally: { facts: 3, events: 9, head: { log: 'l', seq: 9, hash: 'h' } } })
    let isOpen = false
    const opening = freshShop({ held }).then((shop) => {
      isOpen = true
      return shop
    })
    await turns()
    expect(isOpen).toBe(false)
    go()
    expect((await opening).repository.state().kind).toBe('missing')
  })
})

describe('beginning one', () => {
  it('leaves no database behind', async () => {
    const engine = engineOf()
    const made: string[] = []
    const open = engine.indexedDB.open.bind(engine.indexedDB)
    engine.indexedDB.open = (name, version) => {
      made.push(name)
      return open(name, version)
    }
    await freshLog('grainwright-test', engine)
    expect(made).toContain('grainwright-test-fresh-log')
    expect(await engine.indexedDB.databases()).toEqual([])
  })
  it('is given up after a second where the browser does not answer, and where it refuses', async () => {
    const silent = engineOf()
    silent.indexedDB.open = () => new EventTarget() as IDBOpenDBRequest
    const withheld = engineOf()
    withheld.indexedDB.open = () => {
      throw new DOMException('withheld', 'SecurityError')
    }
    vi.useFakeTimers({ toFake: ['setTimeout'] })
    const both = Promise.all([freshLog('a', silent), freshLog('b', withheld)])
    await vi.advanceTimersByTimeAsync(1000)
    await expect(both).resolves.toEqual([undefined, undefined])
    vi.useRealTimers()
  })
})
