/** A book as an earlier app left it: the rows of today's, without what a later number brought, under the older number. */
import { Dexie } from 'dexie'
import { canonical } from '@/domain/records/canonical'
import { Book } from '@/storage/book'
import { sha256 } from '@noble/hashes/sha2'
import { bytesToHex } from '@noble/hashes/utils'
import { FIRST_TABLES } from '../../support/first-tables'

const AT_ONCE = 500

export async function makeOldBook(from: string, name: string): Promise<void> {
  const today = new Book(from)
  await today.open()
  const first = new Dexie(name, { chromeTransactionDurability: 'strict' })
  first.version(1).stores(FIRST_TABLES)
  await first.open()
  for (const table of today.tables) {
    const rows = await table.toArray()
    for (let at = 0; at < rows.length; at += AT_ONCE)
      await first.table(table.name).bulkAdd(rows.slice(at, at + AT_ONCE).map(asFirst))
  }
  await first.table('meta').put({ key: 'schema', value: 1 })
  first.close()
  today.close()
}

const asFirst = ({ of: _, onShelf: __, ...row }: Record<string, unknown>) => row

/** What stands in every table, in one number: two books of the same rows have the same. */
export async function contentOf(name: string): Promise<string> {
  const book = new Book(name)
  await book.open()
  const hash = sha256.create()
  for (const table of book.tables) {
    const lines = (await table.toArray()).map((row) => `${table.name} ${canonical(row as object)}\n`)
    for (const line of lines.toSorted()) hash.update(new TextEncoder().encode(line))
  }
  book.close()
  return bytesToHex(hash.digest())
}

/** A part of the index is taken away, as a migration would leave it that broke off in its midst and was kept. */
export async function spoilIndex(name: string): Promise<void> {
  const book = new Book(name)
  await book.open()
  const lot = await book.lotView.where('onShelf').equals(1).first()
  if (lot === undefined) throw new Error('no lot is on the shelf')
  const { onShelf: _, ...row } = lot
  await book.lotView.put(row)
  book.close()
}
