import { describe, expect, it } from 'vitest'
import type { Personal } from '@/domain/records/personal'
import type { Afterwards } from '@/storage/afterwards'
import { localSecondCopy } from '@/storage/second-copy/second-copy'
import { freshShop, heldSurroundings } from './fresh-shop'
import { live } from './random-book'
import { textOf } from './backup/backup-of'

/** Local storage as the standard has it, as far as it is asked. */
function standInStorage(): Storage {
  const kept = new Map<string, string>()
  return {
    get length() {
      return kept.size
    },
    key: (n: number) => [...kept.keys()][n] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
    clear: () => kept.clear(),
  }
}

const textIn = async (copy: ReturnType<typeof localSecondCopy>) => {
  const source = copy.read()
  return source === undefined ? '' : new Response(source).text()
}

const AT_ONCE: Afterwards = { soon: (call) => call(), now: () => {}, end: () => {} }
/** Nothing is done before it has to be. */
function atLast(): Afterwards {
  const waiting: (() => void)[] = []
  const now = () => waiting.splice(0).forEach((call) => call())
  return { soon: (call) => void waiting.push(call), now, end: now }
}
const events = (...all: readonly object[]) => ({ events: all, facts: [], personal: [], photos: [] })

/** A shop whose browser keeps a second copy, or none. */
async function shopWith(copies: boolean) {
  const held = heldSurroundings()
  const copy = localSecondCopy('grainwright-test', atLast(), standInStorage())
  const surroundings = copies ? { ...held.surroundings, secondCopy: copy } : held.surroundings
  return { shop: await freshShop({ held: { ...held, surroundings } }), copy }
}

const LIVED = [
  { do: 'client', name: 'Ilmari Vesa' },
  { do: 'job', client: 0 },
  { do: 'read', job: 0, arrow: 0, value: 412.3, minute: 2 },
  { do: 'note', job: 0, text: 'rings in the evening' },
] as const

describe('a book that the browser threw away', () => {
  it('is whole again at the next start, to the byte, from the second copy', async () => {
    const { shop } = await shopWith(true)
    await live(shop, LIVED)
    const before = await textOf(shop.repository)
    shop.repository.close()
    await shop.book.delete()
    const later = await shop.open()
    expect(later.state()).toEqual({ kind: 'open', restored: true })
    expect(await textOf(later)).toBe(before)
    expect((await later.findJobs(['ilmari'])).jobs).toHaveLength(1)
    expect(await later.commit(shop.openJob().command)).toMatchObject({ kind: 'saved' })
    expect((await later.archive.verify()).problems).toEqual([])
  })

  it('is whole again by a rescue in the same page', async () => {
    const { shop } = await shopWith(true)
    await live(shop, LIVED)
    const before = await textOf(shop.repository)
    await shop.book.delete()
    expect(await shop.repository.archive.recover()).toMatchObject({ kind: 'recovered', counts: { event: 4, fact: 1 } })
    expect(shop.repository.state()).toEqual({ kind: 'open' })
    expect(await textOf(shop.repository)).toBe(before)
  })

  it('is said to miss records where there is no copy, and where the copy does not reach back far enough', async () => {
    const without = await shopWith(false)
    await live(without.shop, LIVED)
    without.shop.repository.close()
    await without.shop.book.delete()
    expect((await without.shop.open()).state()).toMatchObject({ kind: 'missing', found: { events: 0 } })

    const { shop, copy } = await shopWith(true)
    await live(shop, LIVED)
    const storage = standInStorage()
    const short = localSecondCopy('grainwright-test', AT_ONCE, storage)
    const last = (await textIn(copy)).trimEnd().split('\n').at(-1)!
    short.append({ ...events(), personal: [(JSON.parse(last) as { personal: Personal }).personal] })
    shop.repository.close()
    await shop.book.delete()
    Object.assign(copy, { read: () => short.read() })
    expect((await shop.open()).state()).toMatchObject({
      kind: 'missing',
      remembered: { events: 4 },
      found: { events: 0 },
    })
  })
})

describe('the second copy', () => {
  it('holds every line once more, without photos', async () => {
    const { shop, copy } = await shopWith(true)
    await live(shop, [...LIVED, { do: 'photo', job: 0, byte: 7 }])
    const lines = (await textIn(copy)).trimEnd().split('\n').toSorted()
    const book = (await textOf(shop.repository)).trimEnd().split('\n').slice(1, -1)
    expect(lines).toEqual(book.filter((line) => !line.startsWith('{"photo"')).toSorted())
  })

  it('keeps nothing of a person who was forgotten', async () => {
    const { shop, copy } = await shopWith(true)
    await live(shop, LIVED)
    expect(await textIn(copy)).toContain('Ilmari')
    await live(shop, [{ do: 'client', name: 'Ilmari Vesa' }])
    const clients = await shop.repository.headsOfKind('client')
    const { newFact } = await import('@/domain/records/write')
    for (const client of clients) {
      if (client.kind !== 'ok') throw new Error('unreadable')
      const body = { forget: [client.fact.body.personal] }
      const fact = newFact({ by: 'Ansa', at: '2031-06-01T08:00:00.000Z' }, 'redaction', client.fact.subject, body)
      await shop.repository.commit(shop.command({ facts: [fact] }))
    }
    const text = await textIn(copy)
    expect(text).not.toContain('Ilmari')
    expect(text).toContain('"redaction"')
  })

  it('gives the oldest lines up for the newest and stays under its limit', async () => {
    const storage = standInStorage()
    const copy = localSecondCopy('grainwright-test', AT_ONCE, storage)
    for (let n = 0; n < 60; n++) {
      copy.append(events({ seq: n, text: 'x'.repeat(100_000) }))
      await new Promise((go) => setTimeout(go, 1)) // its keys are sorted by the millisecond
    }
    const text = await textIn(copy)
    expect(text.length).toBeLessThanOrEqual(4_000_000)
    expect(text).toContain('"seq":59')
    expect(text).not.toContain('"seq":0,')
  })

  it('costs the builder nothing where storage is blocked', () => {
    const blocked = standInStorage()
    blocked.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError')
    }
    const copy = localSecondCopy('grainwright-test', AT_ONCE, blocked)
    expect(() => copy.append(events({}))).not.toThrow()
    expect(copy.read()).toBeUndefined()
  })
})
