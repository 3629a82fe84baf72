import { describe, expect, it } from 'vitest'
import { memoryKeep } from '@/storage/backup/memory-keep'
import { setMeta } from '@/storage/meta'
import { freshShop } from './fresh-shop'
import { live } from './random-book'
import { fileOf, textOf } from './backup/backup-of'

const LIVED = [
  { do: 'client', name: 'Ilmari Vesa' },
  { do: 'job', client: 0 },
  { do: 'read', job: 0, arrow: 0, value: 412.3, minute: 2 },
  { do: 'note', job: 0, text: 'rings in the evening' },
  { do: 'photo', job: 0, byte: 7 },
] as const

describe('after a failed write', () => {
  it('nothing more is written, reading goes on, and a reload does not forget it', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    shop.held.surroundings.outside.fail(shop.name, 'QuotaExceededError')
    const reopened = await shop.open()
    expect(reopened.state()).toEqual({ kind: 'failed', detail: 'QuotaExceededError' })
    expect(await reopened.commit(shop.openJob().command)).toMatchObject({ kind: 'not-saved', why: 'stopped' })
    expect(await reopened.jobViews()).toHaveLength(1)
  })

  it('the book is rescued: out, checked, removed, founded anew, in, compared', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    const before = await textOf(shop.repository)
    const views = await shop.repository.jobViews()
    await shop.book.open()
    await setMeta(shop.book, 'backupFile', { name: 'shop.jsonl' })
    shop.book.close()
    shop.repository.close()
    shop.held.surroundings.outside.fail(shop.name, 'QuotaExceededError')
    const reopened = await shop.open()
    const oldLog = (await reopened.tally()).head.log

    const keep = memoryKeep()
    expect(await reopened.archive.recover(keep)).toMatchObject({
      kind: 'recovered',
      counts: { event: 5, fact: 1 },
      lost: [],
    })
    expect(reopened.state()).toEqual({ kind: 'open' })
    expect(await textOf(reopened)).toBe(before)
    expect(await reopened.jobViews()).toEqual(views)
    expect(await reopened.archive.file.name()).toBe('shop.jsonl')
    expect((await reopened.tally()).head).toMatchObject({ seq: 0 })
    expect((await reopened.tally()).head.log).not.toBe(oldLog)
    expect(await reopened.commit(shop.openJob().command)).toMatchObject({ kind: 'saved' })
    expect((await reopened.archive.verify()).problems).toEqual([])
    expect((await shop.open()).state()).toEqual({ kind: 'open' })
  })

  it('nothing is removed when the file does not read back as it was written', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    const before = await textOf(shop.repository)
    shop.repository.close()
    shop.held.surroundings.outside.fail(shop.name, 'QuotaExceededError')
    const reopened = await shop.open()
    const keep = memoryKeep()
    const spoilt = { ...keep, read: async () => fileOf((await keep.blob().text()).replace('412.3', '412.4')) }
    expect(await reopened.archive.recover(spoilt)).toMatchObject({ kind: 'not-recovered' })
    expect(reopened.state()).toMatchObject({ kind: 'failed' })
    expect(await textOf(reopened)).toBe(before)
  })

  it('a rescue broken off after the removal is noticed: records are missing, and the kept file brings them back', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    const before = await textOf(shop.repository)
    shop.repository.close()
    shop.held.surroundings.outside.fail(shop.name, 'QuotaExceededError')
    const reopened = await shop.open()
    const keep = memoryKeep()
    let reads = 0
    const broken = {
      ...keep,
      read: () => {
        reads += 1
        return reads === 1 ? keep.read() : Promise.reject(new Error('the tab was closed'))
      },
    }
    expect(await reopened.archive.recover(broken)).toMatchObject({
      kind: 'not-recovered',
      problem: expect.stringContaining('tab was closed'),
    })
    reopened.close()
    const later = await shop.open()
    expect(later.state()).toMatchObject({
      kind: 'missing',
      remembered: { facts: 1, events: 5 },
      found: { facts: 0, events: 0 },
    })
    expect(await later.commit(shop.openJob().command)).toMatchObject({ kind: 'not-saved', why: 'stopped' })
    await later.archive.stage(await keep.read())
    expect(await later.archive.addStaged()).toMatchObject({ kind: 'saved' })
    expect(later.state()).toEqual({ kind: 'open' })
    expect(await textOf(later)).toBe(before)
  })
})

describe('the loss alarm', () => {
  it('names what is missing when the database was emptied, and never greets as on the first day', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    shop.repository.close()
    await shop.book.delete()
    const later = await shop.open()
    expect(later.state()).toMatchObject({ kind: 'missing', remembered: { events: 5 }, found: { events: 0 } })
    await later.acceptLoss()
    expect(later.state()).toEqual({ kind: 'open' })
    expect(await later.commit(shop.openJob().command)).toMatchObject({ kind: 'saved' })
    expect((await shop.open()).state()).toEqual({ kind: 'open' })
  })

  it('notices a book set back in time, and then writes another log', async () => {
    const shop = await freshShop()
    await live(shop, LIVED)
    const log = (await shop.repository.tally()).head.log
    shop.repository.close()
    await shop.book.open()
    const last = await shop.book.events.where('[log+seq]').equals([log, 5]).first()
    await shop.book.events.delete(last!.hash)
    const tally = (await shop.book.meta.get('tally'))!.value as { events: number; head: { seq: number } }
    await shop.book.meta.put({
      key: 'tally',
      value: { ...tally, events: 4, head: { ...tally.head, seq: 4, hash: last!.prev } },
    })
    shop.book.close()
    const later = await shop.open()
    expect(later.state()).toMatchObject({ kind: 'missing', remembered: { events: 5 }, found: { events: 4 } })
    await later.acceptLoss()
    expect((await later.tally()).head).toMatchObject({ seq: 0 })
    expect((await later.tally()).head.log).not.toBe(log)
  })

  it('is quiet on the first day and on every ordinary one', async () => {
    const shop = await freshShop()
    expect(shop.repository.state()).toEqual({ kind: 'open' })
    await live(shop, LIVED)
    shop.repository.close()
    expect((await shop.open()).state()).toEqual({ kind: 'open' })
  })
})
