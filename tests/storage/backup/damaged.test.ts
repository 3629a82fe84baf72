import { beforeAll, describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { canonical } from '@/domain/records/canonical'
import { readBackup } from '@/storage/backup/read-backup'
import { freshShop } from '../fresh-shop'
import { live } from '../random-book'
import { backupOf, bytesOf, fileOf, joined, textOf } from './backup-of'
import { bombs } from './bombs'

const RUNS = Number(process.env['DAMAGE_RUNS'] ?? 2000)

let whole: Uint8Array<ArrayBuffer>
beforeAll(async () => {
  const shop = await freshShop()
  await live(shop, [
    { do: 'client', name: 'Ilmari Vesa' },
    { do: 'job', client: 0 },
    { do: 'read', job: 0, arrow: 0, value: 412.3, minute: 2 },
    { do: 'note', job: 0, text: 'rings in the evening' },
    { do: 'photo', job: 0, byte: 7 },
    { do: 'stock', lot: 0, by: 12 },
  ])
  whole = await backupOf(shop.repository)
})

describe('a damaged file', () => {
  it('is whole only when nothing was done to it', async () => {
    expect(await readBackup(fileOf(whole))).toMatchObject({
      kind: 'whole',
      counts: { event: 6, fact: 1, personal: 2, photo: 1 },
    })
  })

  it('is refused when cut short at any byte', { timeout: 120_000 }, async () => {
    for (let length = 0; length < whole.length; length++) {
      expect((await readBackup(fileOf(whole.slice(0, length)))).kind, `cut at ${length}`).not.toBe('whole')
    }
  })

  it('is refused wherever bytes were changed, taken out, put in or swapped', { timeout: 3_600_000 }, async () => {
    const place = fc.nat(whole.length - 1)
    const damage = fc.oneof(
      fc
        .tuple(place, fc.integer({ min: 1, max: 255 }))
        .map(([at, by]) => whole.map((byte, i) => (i === at ? byte ^ by : byte))),
      fc
        .tuple(place, fc.integer({ min: 1, max: 200 }))
        .map(([at, n]) => joined([whole.slice(0, at), whole.slice(at + n)])),
      fc
        .tuple(place, fc.uint8Array({ minLength: 1, maxLength: 40 }))
        .map(([at, more]) => joined([whole.slice(0, at), more, whole.slice(at)])),
      fc.tuple(place, place).map(([a, b]) => joined([whole.slice(0, a), whole.slice(b)])),
      fc
        .shuffledSubarray(new TextDecoder().decode(whole).split('\n').slice(0, -1))
        .map((lines) => bytesOf(lines.map((line) => `${line}\n`).join(''))),
    )
    await fc.assert(
      fc.asyncProperty(damage, async (bytes) => {
        fc.pre(Buffer.compare(Buffer.from(bytes), Buffer.from(whole)) !== 0)
        expect((await readBackup(fileOf(new Uint8Array(bytes)))).kind).not.toBe('whole')
      }),
      { numRuns: RUNS },
    )
  })

  it('is refused when a reading was changed and everything hashed anew but the record itself', async () => {
    const text = new TextDecoder().decode(whole).replace('"value":412.3', '"value":412.4')
    expect(await readBackup(fileOf(text))).toMatchObject({ kind: 'damaged' })
  })

  it('touches nothing of the book until its readable records are asked for, and then brings those', async () => {
    const shop = await freshShop()
    await live(shop, [{ do: 'client', name: 'Saga' }])
    const before = await textOf(shop.repository)
    const cut = whole.slice(0, whole.length - 400)
    const staged = await shop.repository.archive.stage(fileOf(cut))
    expect(staged.check).toMatchObject({ kind: 'damaged', readable: { event: 6, fact: 1 } })
    expect(await textOf(shop.repository)).toBe(before)
    expect(await shop.repository.jobViews()).toEqual([])
    await shop.repository.archive.discardStaged()
    await shop.repository.archive.addStaged()
    expect(await textOf(shop.repository)).toBe(before)

    await shop.repository.archive.stage(fileOf(cut))
    await shop.repository.archive.addStaged()
    expect(await shop.repository.jobViews()).toMatchObject([{ name: 'Ilmari Vesa' }])
    // The note that stood in the lines cut off is named by its event, and found to be gone.
    expect((await shop.repository.archive.verify()).problems).toMatchObject([{ problem: 'named missing' }])
  })

  it('is damaged or refused, never a crash, whatever bytes come', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 500 }), async (bytes) => {
        expect((await readBackup(fileOf(new Uint8Array(bytes)))).kind).not.toBe('whole')
      }),
    )
  })
})

describe('a bomb', () => {
  // How soon is measured by npm run bench.
  it.each(Object.keys(bombs(new Uint8Array())))('is refused: %s', async (name) => {
    expect(await readBackup(fileOf(bombs(whole)[name]!()))).toMatchObject({ kind: 'refused' })
  })
})

describe('a hostile text', () => {
  it.each([
    '{"personal":{"fields":{},"hash":"0","salt":"0","salt":"1"}}',
    '{"event":{},"fact":{}}',
    '{"__proto__":{}}',
    '{"fact":{"__proto__":{"admin":true},"hash":"0"}}',
    '{"constructor":{}}',
    '[]',
    'null',
    '0',
    '""',
    '{}',
    ' {"header":{}}',
    '{"photo":{"hash":"0","type":"image/svg+xml","bytes":["PHN2Zy8+"]}}',
  ])('is named as bad and nothing more: %s', async (line) => {
    const file = `${canonical({ header: { app: 'Grainwright', format: 1, schema: 1 } })}\n${line}\n`
    const check = await readBackup(fileOf(file))
    expect(check).toMatchObject({ kind: 'damaged', readable: { event: 0, fact: 0, personal: 0, photo: 0 } })
    expect(check.kind === 'damaged' && check.problems[0]).toContain('line 2')
    expect(Object.hasOwn(Object.prototype, 'admin')).toBe(false)
  })
})
