/** Opens a book, founds it on the first day, and compares it with what was remembered outside. */
import { startOf } from '../domain/records/chain'
import type { RepositoryState, Tally } from '../domain/ports'
import type { Id } from '../domain/records/scalars'
import { SCHEMA } from './book'
import type { Book } from './book'
import { emptyTally, meta, setMeta } from './meta'
import type { Surroundings } from './surroundings'

/**
 * @param newLog the id of an event log. Each database writes a log of its own; one that lost records opens another, so
 *   that what it writes cannot stand in the place of what a backup may still bring back
 * @throws Dexie's error when the database cannot be opened at all
 */
export async function openBook(
  book: Book,
  newLog: () => Id,
  outside: Surroundings['outside'],
): Promise<RepositoryState> {
  if (!book.isOpen()) await book.open()
  return book.transaction('rw', book.meta, async (): Promise<RepositoryState> => {
    const stored = (await meta(book, 'schema')) ?? 0
    if (stored > SCHEMA) return { kind: 'newer-app', stored, known: SCHEMA }
    if (stored < SCHEMA) await setMeta(book, 'schema', SCHEMA)
    const kept = await meta(book, 'tally')
    const found = kept ?? emptyTally(newLog())
    if (!kept) await setMeta(book, 'tally', found)
    const { tally: remembered, failed } = outside.read(book.name) ?? {}
    if (!remembered || !isShorter(found, remembered)) {
      return failed === undefined ? { kind: 'open' } : { kind: 'failed', detail: failed }
    }
    if (kept) await setMeta(book, 'tally', { ...found, head: startOf(newLog()) })
    return { kind: 'missing', remembered, found }
  })
}

/** Whether something is gone: fewer records than remembered, or this log ends before or beside where it ended. */
export const isShorter = (found: Tally, remembered: Tally): boolean =>
  found.facts < remembered.facts ||
  found.events < remembered.events ||
  (found.head.log === remembered.head.log &&
    (found.head.seq < remembered.head.seq ||
      (found.head.seq === remembered.head.seq && found.head.hash !== remembered.head.hash)))
