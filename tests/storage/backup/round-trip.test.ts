import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { gzipSync } from 'node:zlib'
import { freshShop } from '../fresh-shop'
import { live, steps } from '../random-book'
import { backupOf, fileOf, textOf } from './backup-of'

const RUNS = Number(process.env['BACKUP_RUNS'] ?? 100)
const MERGES = Number(process.env['MERGE_RUNS'] ?? 1000) // files added to a book that is then compared
const MERGES_EACH = 12

/** Reads a backup into a shop, as a person would who looked at the preview and said yes. */
async function add(shop: Awaited<ReturnType<typeof freshShop>>, file: Uint8Array<ArrayBuffer>) {
  const staged = await shop.repository.archive.stage(fileOf(file, 1000))
  expect(staged.check.kind).toBe('whole')
  expect(await shop.repository.archive.addStaged()).toMatchObject({ kind: 'saved' })
  return staged
}

describe('a backup', () => {
  it('exported, imported and exported again is the same to the byte', { timeout: 300_000 + 1000 * RUNS }, async () => {
    await fc.assert(
      fc.asyncProperty(steps(25), async (lived) => {
        const [here, there] = [await freshShop(), await freshShop()]
        await live(here, lived)
        const file = await backupOf(here.repository)
        await add(there, file)
        expect(await textOf(there.repository)).toBe(new TextDecoder().decode(file))
      }),
      { numRuns: RUNS },
    )
  })

  it('holds no clock: the same book gives the same bytes', async () => {
    const shop = await freshShop()
    await live(shop, [
      { do: 'client', name: 'Ilmari' },
      { do: 'job', client: 0 },
    ])
    expect(await textOf(shop.repository)).toBe(await textOf(shop.repository))
  })

  it('reads packed with gzip as well', async () => {
    const [here, there] = [await freshShop(), await freshShop()]
    await live(here, [
      { do: 'client', name: 'Ilmari' },
      { do: 'job', client: 0 },
    ])
    const file = await backupOf(here.repository)
    await add(there, new Uint8Array(gzipSync(file)))
    expect(await backupOf(there.repository)).toEqual(file)
  })

  it('says before it is added what it would bring, and then shows it', async () => {
    const [here, there] = [await freshShop(), await freshShop()]
    await live(here, [
      { do: 'client', name: 'Ilmari' },
      { do: 'job', client: 0 },
      { do: 'read', job: 0, arrow: 1, value: 412.3, minute: 1 },
    ])
    const file = await backupOf(here.repository)
    const staged = await there.repository.archive.stage(fileOf(file))
    expect(staged).toMatchObject({
      adds: { event: 3, fact: 1, personal: 1, photo: 0 },
      alreadyThere: { event: 0 },
      forgotten: 0,
    })
    expect(staged.jobs).toHaveLength(1)
    expect(await there.repository.jobViews()).toEqual([])

    await there.repository.archive.addStaged()
    expect(await there.repository.jobViews()).toEqual(await here.repository.jobViews())
    expect((await there.repository.findJobs(['ilm'])).jobs).toHaveLength(1)
    expect(await there.repository.archive.stage(fileOf(file))).toMatchObject({
      adds: { event: 0, fact: 0, personal: 0, photo: 0 },
      alreadyThere: { event: 3, fact: 1, personal: 1 },
    })
  })

  it('does not bring back a person whom this book has forgotten', async () => {
    const shop = await freshShop()
    await live(shop, [
      { do: 'client', name: 'Ilmari' },
      { do: 'job', client: 0 },
    ])
    const old = await backupOf(shop.repository)
    const client = (await shop.repository.headsOfKind('client'))[0]
    if (client?.kind !== 'ok') throw new Error('no client')
    const { newFact } = await import('@/domain/records/write')
    const forget = { forget: [client.fact.body.personal] }
    const at = '2031-06-01T08:00:00.000Z'
    await shop.repository.commit(
      shop.command({ facts: [newFact({ by: 'Ansa', at }, 'redaction', client.fact.subject, forget)] }),
    )
    expect(await textOf(shop.repository)).not.toContain('Ilmari')
    expect(await shop.repository.findJobs(['ilmari'])).toEqual({ jobs: [], of: 0 })
    expect(await shop.repository.jobViews()).toMatchObject([{ name: '' }])

    const staged = await add(shop, old)
    expect(staged.forgotten).toBe(1)
    expect(await shop.repository.personal(client.fact.body.personal)).toBeUndefined()
    expect(await textOf(shop.repository)).not.toContain('Ilmari')
    expect((await shop.repository.archive.verify()).problems).toEqual([])

    const other = await freshShop()
    await add(other, old)
    expect(await textOf(other.repository)).toContain('Ilmari')
    await add(other, await backupOf(shop.repository))
    expect(await textOf(other.repository)).not.toContain('Ilmari')
    expect(await other.repository.jobViews()).toMatchObject([{ name: '' }])
  })
})

describe('merging by file', () => {
  /** What a book holds after these files were added to an empty one, in this order. */
  const after = async (...files: Uint8Array<ArrayBuffer>[]) => {
    const shop = await freshShop()
    for (const file of files) await add(shop, file)
    return {
      text: await textOf(shop.repository),
      jobs: await shop.repository.jobViews(),
      lots: (await shop.repository.lotsOnShelf()).views,
    }
  }

  it('does not depend on order, on grouping or on how often', { timeout: 300_000 + 1000 * MERGES }, async () => {
    await fc.assert(
      fc.asyncProperty(steps(10), steps(10), steps(10), steps(6), async (common, here, there, elsewhere) => {
        const origin = await freshShop()
        await live(origin, common)
        const base = await backupOf(origin.repository)
        const files = []
        for (const own of [here, there, elsewhere]) {
          const shop = await freshShop()
          await add(shop, base)
          await live(shop, own)
          files.push(await backupOf(shop.repository))
        }
        const [a, b, c] = files as [Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>]
        const abc = await after(a, b, c)
        expect(await after(c, b, a)).toEqual(abc)
        expect(await after(b, a, b, c, c)).toEqual(abc)
        const bc = new TextEncoder().encode((await after(b, c)).text)
        expect(await after(a, bc)).toEqual(abc)
      }),
      { numRuns: Math.ceil(MERGES / MERGES_EACH) },
    )
  })

  it('brings two devices to the same content, byte for byte, both ways', async () => {
    const [here, there] = [await freshShop(), await freshShop()]
    await live(here, [
      { do: 'client', name: 'Ilmari' },
      { do: 'job', client: 0 },
    ])
    await add(there, await backupOf(here.repository))
    await live(here, [
      { do: 'client', name: 'Saga' },
      { do: 'stock', lot: 0, by: 12 },
    ])
    await live(there, [
      { do: 'client', name: 'Tove' },
      { do: 'job', client: 0 },
    ])
    const [fromHere, fromThere] = [await backupOf(here.repository), await backupOf(there.repository)]
    await add(here, fromThere)
    await add(there, fromHere)
    expect(await textOf(here.repository)).toBe(await textOf(there.repository))
    expect(await here.repository.jobViews()).toEqual(await there.repository.jobViews())
    expect((await here.repository.archive.verify()).problems).toEqual([])
  })
})
