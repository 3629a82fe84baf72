import { describe, expect, it } from 'vitest'
import { backupFile } from '@/storage/backup-file'
import { freshShop } from './fresh-shop'
import { live } from './random-book'
import { joined, textOf } from './backup/backup-of'

/** A file the user chose: what was written takes its place only when it was closed. */
function chosenFile(permission: PermissionState, broken = false) {
  let content = 'what was there before'
  const handle = {
    name: 'shop.jsonl',
    queryPermission: async () => permission,
    requestPermission: async () => 'granted' as const,
    createWritable: async () => {
      const pieces: Uint8Array[] = []
      return {
        write: async (bytes: Uint8Array<ArrayBuffer>) => {
          if (broken && pieces.length > 0) throw new Error('the stick was pulled out')
          pieces.push(bytes.slice())
        },
        close: async () => void (content = new TextDecoder().decode(joined(pieces))),
        abort: async () => {},
      }
    },
  }
  return { handle, content: () => content }
}

/** The simulated database cannot store functions, so the handle is remembered beside it. */
async function shopWith(file: ReturnType<typeof chosenFile> | undefined) {
  const shop = await freshShop()
  await live(shop, [
    { do: 'client', name: 'Ilmari' },
    { do: 'job', client: 0 },
  ])
  await shop.book.open()
  const get = shop.book.meta.get.bind(shop.book.meta)
  shop.book.meta.get = ((key: string) =>
    key === 'backupFile' ? Promise.resolve(file && { key, value: file.handle }) : get(key)) as typeof shop.book.meta.get
  return { shop, target: backupFile(shop.book, { showSaveFilePicker: async () => file!.handle }) }
}

describe('the backup file', () => {
  it('takes the whole backup, and the book knows how old it is', async () => {
    const file = chosenFile('granted')
    const { shop, target } = await shopWith(file)
    expect(await shop.repository.backupState()).toEqual({ at: null, lacks: 3 })
    expect(await target.save('2031-05-04T12:00:00.000Z', false)).toMatchObject({ kind: 'saved' })
    expect(file.content()).toBe(await textOf(shop.repository))
    expect(await shop.repository.backupState()).toEqual({ at: '2031-05-04T12:00:00.000Z', lacks: 0 })
    await live(shop, [{ do: 'client', name: 'Saga' }])
    expect(await shop.repository.backupState()).toMatchObject({ lacks: 1 })
  })

  it('is not written without leave, and asks for it only from a click', async () => {
    const file = chosenFile('prompt')
    const { target } = await shopWith(file)
    expect(await target.save('2031-05-04T12:00:00.000Z', false)).toEqual({ kind: 'not allowed' })
    expect(file.content()).toBe('what was there before')
    expect(await target.save('2031-05-04T12:00:00.000Z', true)).toMatchObject({ kind: 'saved' })
  })

  it('stays as it was when writing fails, and nothing claims a backup', async () => {
    const file = chosenFile('granted', true)
    const { shop, target } = await shopWith(file)
    expect(await target.save('2031-05-04T12:00:00.000Z', false)).toMatchObject({ kind: 'failed' })
    expect(file.content()).toBe('what was there before')
    expect(await shop.repository.backupState()).toMatchObject({ at: null })
  })

  it('says so when none was chosen, and where the browser has no such files', async () => {
    const { shop, target } = await shopWith(undefined)
    expect(await target.name()).toBeUndefined()
    expect(await target.save('2031-05-04T12:00:00.000Z', false)).toEqual({ kind: 'no file' })
    const without = backupFile(shop.book, {})
    expect(without.supported).toBe(false)
    expect(await without.choose('shop.jsonl')).toBe('not supported')
  })
})
