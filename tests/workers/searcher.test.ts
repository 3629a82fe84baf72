import { expose } from 'comlink'
import { afterEach, describe, expect, it } from 'vitest'
import { findParts } from '@/domain/search/find-parts'
import type { Searcher } from '@/domain/search/searcher'
import { searchDesk } from '@/workers/search-desk'
import { searcherAt } from '@/workers/searcher-at'
import { dice, problemOf, shelf } from '@tests/domain/search/shelf-of-stock'

const small = problemOf(shelf(dice(1), { shafts: 2, inserts: 3, collars: 1, heads: 3, nocks: 1, vanes: 1, wraps: 0 }))
/** Takes seconds: a hundred million combinations, none of which fits. */
const large = problemOf(
  shelf(dice(2), { shafts: 12, inserts: 20, collars: 7, heads: 25, nocks: 6, vanes: 10, wraps: 3, rearWeights: 3 }),
  { reserve: { min: 1.111, max: 1.1111, tolerance: 0.05 }, foc: { min: 33, max: 34, tolerance: 0.5 } },
)

let open: Searcher | undefined
afterEach(() => {
  open?.close()
  open = undefined
})

/** A searcher and its desk with a real message channel between them, as a worker has. */
function connected(): Searcher {
  const { port1, port2 } = new MessageChannel()
  expose(searchDesk(), port1 as unknown as Parameters<typeof expose>[1])
  port1.start()
  open = searcherAt(port2, () => {
    port1.close()
    port2.close()
  })
  port2.start()
  return open
}
const soon = (milliseconds: number) => new Promise((go) => setTimeout(go, milliseconds))

describe('a searcher', () => {
  it('answers what the search itself answers', async () => {
    expect(await connected().find(small).end).toEqual({ kind: 'found', answer: findParts(small) })
  })

  it('tells how far it has come', async () => {
    const seen: number[] = []
    const running = connected().find(large, ({ counts }) => seen.push(counts.visited))
    await soon(400)
    running.stop()
    await running.end
    expect(seen.length).toBeGreaterThan(1)
    expect(seen).toEqual(seen.toSorted((a, b) => a - b))
  })

  it('stops within 100 ms of being told to, and leaves the thread free', async () => {
    const searcher = connected()
    const running = searcher.find(large)
    await soon(100)
    const began = performance.now()
    running.stop()
    expect(await running.end).toEqual({ kind: 'stopped' })
    expect(performance.now() - began).toBeLessThan(100)
    expect((await searcher.find(small).end).kind).toBe('found')
  })

  it('answers only the newest of two searches in quick succession', async () => {
    const searcher = connected()
    const late: string[] = []
    const first = searcher.find(large, () => late.push('progress of the first'))
    const second = searcher.find(small)
    expect(await first.end).toEqual({ kind: 'replaced' })
    late.length = 0
    expect(await second.end).toEqual({ kind: 'found', answer: findParts(small) })
    expect(late).toEqual([])
    first.stop() // of a search that is over: the second's answer stands
    expect((await second.end).kind).toBe('found')
  })

  it('says that it failed where the other end breaks', async () => {
    const { port1, port2 } = new MessageChannel()
    const broken = {
      find: () => {
        throw new Error('out of memory')
      },
      stop: () => {},
    }
    expose(broken, port1 as unknown as Parameters<typeof expose>[1])
    port1.start()
    port2.start()
    open = searcherAt(port2, () => {
      port1.close()
      port2.close()
    })
    expect(await open.find(small).end).toEqual({ kind: 'failed', detail: 'Error: out of memory' })
  })

  it('says that it failed where the worker cannot be loaded', async () => {
    const line = new EventTarget() as EventTarget & { postMessage: () => void }
    line.postMessage = () => {}
    const running = searcherAt(line, () => {}).find(small)
    line.dispatchEvent(new Event('error'))
    expect(await running.end).toMatchObject({ kind: 'failed' })
  })
})
