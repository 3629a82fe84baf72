/** The few values a book keeps about itself. */
import { startOf } from '../domain/records/chain'
import type { Tally } from '../domain/ports'
import type { Id } from '../domain/records/scalars'
import type { Book, MetaRow } from './book'

interface MetaValues {
  schema: number
  /** How much there is, and where this database's own event log stands. */
  tally: Tally
  /** How often a backup was added: what it brings of personal data alone leaves the tally as it was. */
  imports: number
  /** The last backup: when, and how many records there were. */
  backup: { readonly at: string; readonly rows: number }
  /** The handle of a file that the user chose for backups. */
  backupFile: unknown
}

export const emptyTally = (log: Id): Tally => ({ facts: 0, events: 0, head: startOf(log) })

export async function meta<K extends keyof MetaValues>(book: Book, key: K): Promise<MetaValues[K] | undefined> {
  return (await book.meta.get(key))?.value as MetaValues[K] | undefined
}

export const setMeta = <K extends keyof MetaValues>(book: Book, key: K, value: MetaValues[K]) =>
  book.meta.put({ key, value } satisfies MetaRow)

/** The state of the records in one text: while it is the same, nobody has written anything. */
export const stampOf = (tally: Tally, imports: number): string =>
  [tally.facts, tally.events, tally.head.log, tally.head.seq, tally.head.hash, imports].join(' ')

/** @throws when the book was never founded: see `openBook` */
export async function tallyOf(book: Book): Promise<Tally> {
  const tally = await meta(book, 'tally')
  if (!tally) throw new Error('The book was never founded')
  return tally
}
