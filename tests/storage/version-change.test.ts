/** An app that was updated in another tab: code of yesterday writes nothing to a book of today. */
import { Dexie } from 'dexie'
import { describe, expect, it } from 'vitest'
import { SCHEMA } from '@/storage/book'
import { freshShop } from './fresh-shop'
import type { Shop } from './fresh-shop'
import { live } from './random-book'
import { textOf } from './backup/backup-of'

const LIVED = [
  { do: 'client', name: 'Ilmari' },
  { do: 'job', client: 0 },
] as const

/** What a later app leaves behind: the same tables, a higher number. */
async function raise(shop: Shop) {
  await shop.book.open()
  await shop.book.meta.put({ key: 'schema', value: SCHEMA + 1 })
}

describe('a book of a later app', () => {
  it('is read by older code and not written to, neither by a command nor by an import', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    const before = await textOf(shop.repository)
    const { command } = shop.openJob()
    await raise(shop)
    expect(await shop.repository.commit(command)).toMatchObject({ kind: 'not-saved', why: 'newer-app' })
    expect(shop.repository.state()).toEqual({ kind: 'newer-app', stored: SCHEMA + 1, known: SCHEMA })
    expect(await shop.repository.archive.addStaged()).toMatchObject({ kind: 'not-saved', why: 'newer-app' })
    expect(await textOf(shop.repository)).toBe(before)
    expect(await shop.repository.jobViews()).toHaveLength(1)
  })

  it('is told on opening, and is left as it was', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    shop.repository.close()
    await raise(shop)
    const later = await shop.open()
    expect(later.state()).toMatchObject({ kind: 'newer-app' })
    expect(await later.commit(shop.openJob().command)).toMatchObject({ kind: 'not-saved', why: 'newer-app' })
    expect(await shop.book.meta.get('schema')).toMatchObject({ value: SCHEMA + 1 })
  })

  it('takes the database from an open tab, which closes and says reload, and does not open it again', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    const later = new Dexie(shop.name, shop.engine)
    later.version(SCHEMA + 1).stores({ more: 'hash' })
    await later.open()
    expect(shop.repository.state()).toEqual({ kind: 'closed' })
    expect(await shop.repository.commit(shop.openJob().command)).toMatchObject({ kind: 'not-saved', why: 'closed' })
    await expect(shop.repository.jobViews()).rejects.toThrow()
    later.close()
  })

  it('is not protected by anything else: the same write goes through when the number is not raised', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    expect(await shop.repository.commit(shop.openJob().command)).toMatchObject({ kind: 'saved' })
    expect(await shop.repository.jobViews()).toHaveLength(2)
  })
})

describe('an import that was interrupted', () => {
  it('has changed nothing, and given again it is whole', async () => {
    const [here, there] = [await freshShop(), await freshShop()]
    await live(here, LIVED)
    const before = await textOf(there.repository)
    const whole = await textOf(here.repository)
    const half = new ReadableStream<Uint8Array<ArrayBuffer>>({
      start(controller) {
        controller.enqueue(new TextEncoder().encode(whole.slice(0, whole.length / 2)))
        controller.error(new DOMException('the file went away', 'NotReadableError'))
      },
    })
    const { check } = await there.repository.archive.stage(half)
    expect(check).toMatchObject({ kind: 'refused', problem: expect.stringContaining('went away') })
    expect(await textOf(there.repository)).toBe(before)
    there.repository.close() // and the tab with it
    const later = await there.open()
    expect(later.state()).toEqual({ kind: 'open' })
    expect(await textOf(later)).toBe(before)
    await later.archive.stage(new Blob([whole]).stream())
    expect(await later.archive.addStaged()).toMatchObject({ kind: 'saved' })
    expect(await textOf(later)).toBe(whole)
  })
})
