import { describe, expect, it } from 'vitest'
import type { EventRow } from '@/storage/book'
import { eachChunk } from '@/storage/each-row'
import { countWork } from './count-work'
import { freshShop } from './fresh-shop'

/** Events of two logs, so many a log; at one place of the first stand as many as `forked` says. */
async function bookOf(each: number, forked = 1) {
  const shop = await freshShop()
  const { book } = shop
  await book.open()
  const rows = ['a', 'b'].flatMap((log) =>
    Array.from({ length: each }, (_, seq) =>
      Array.from({ length: log === 'a' && seq === 3 ? forked : 1 }, (__, n) => ({
        hash: `${log}${seq}/${n}`,
        log,
        seq,
      })),
    ).flat(),
  )
  await book.events.bulkAdd(rows.toReversed() as unknown as EventRow[])
  return { book, rows }
}

async function told(chunks: AsyncGenerator<readonly { readonly ok: boolean }[]>) {
  const lengths: number[] = []
  const hashes: string[] = []
  for await (const chunk of chunks) {
    lengths.push(chunk.length)
    hashes.push(...chunk.map((each) => ('row' in each ? (each.row as EventRow).hash : '')))
  }
  return { lengths, hashes }
}

describe('the rows of a long table', () => {
  it.each([
    [700, 1],
    [250, 1],
    [600, 2],
    [300, 1400],
  ])('come each once and in order, %i a log and %i at one place', async (each, forked) => {
    const { book, rows } = await bookOf(each, forked)
    const { hashes, lengths } = await told(eachChunk(book.events, '[log+seq]'))
    const place = new Map(rows.map(({ hash, log, seq }) => [hash, `${log} ${String(seq).padStart(4, '0')}`]))
    expect(hashes.map((hash) => place.get(hash))).toEqual([...place.values()])
    expect(new Set(hashes).size).toBe(rows.length)
    expect(Math.max(...lengths)).toBeLessThanOrEqual(500)
    book.close()
  })

  it('are told no more than a page of keys at once, however long it is', async () => {
    const { book } = await bookOf(1500)
    const chunks = eachChunk(book.events, '[log+seq]')
    const { keys } = await countWork(() => chunks.next())
    expect(keys).toBeLessThanOrEqual(502) // a page, and the two steps to the place it ends at
    expect(keys).toBeGreaterThan(0)
    const second = await countWork(() => chunks.next())
    expect(second.keys).toBeLessThanOrEqual(1002)
    book.close()
  })

  it('are told with those that came in behind the place reached', async () => {
    const { book } = await bookOf(600)
    const chunks = eachChunk(book.events, '[log+seq]')
    await chunks.next()
    await book.events.add({ hash: 'late', log: 'b', seq: 900 } as unknown as EventRow)
    expect((await told(chunks)).hashes.at(-1)).toBe('late')
    book.close()
  })
})
