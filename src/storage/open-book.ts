/** Opens a book, founds it on the first day, brings its views to today's, and compares it with what was remembered outside. */
import { startOf } from '../domain/records/chain'
import type { RepositoryState, Tally } from '../domain/ports'
import type { Id } from '../domain/records/scalars'
import type { ViewRules } from '../domain/records/view-rules'
import { SCHEMA, VIEWS_SINCE } from './book'
import type { Book } from './book'
import { emptyTally, meta, setMeta } from './meta'
import { rebuildAllViews } from './rebuild-views'
import type { Surroundings } from './surroundings'

/**
 * @param newLog the id of an event log. Each database writes a log of its own; one that lost records opens another, so
 *   that what it writes cannot stand in the place of what a backup may still bring back
 * @throws Dexie's error when the database cannot be opened at all
 */
export async function openBook(
  book: Book,
  rules: ViewRules,
  newLog: () => Id,
  outside: Surroundings['outside'],
): Promise<RepositoryState> {
  if (!book.isOpen()) await book.open()
  await viewsOfToday(book, rules)
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

/** An earlier app's views are made anew, in the same transaction that says so: cut short, it is done again. */
async function viewsOfToday(book: Book, rules: ViewRules): Promise<void> {
  const stored = (await meta(book, 'schema')) ?? VIEWS_SINCE
  if (stored >= VIEWS_SINCE) return
  await book.transaction('rw', book.tables, async () => {
    await rebuildAllViews(book, rules)
    await setMeta(book, 'schema', SCHEMA)
  })
}

/** Whether something is gone: fewer records than remembered, or this log ends before or beside where it ended. */
export const isShorter = (found: Tally, remembered: Tally): boolean =>
  found.facts < remembered.facts ||
  found.events < remembered.events ||
  (found.head.log === remembered.head.log &&
    (found.head.seq < remembered.head.seq ||
      (found.head.seq === remembered.head.seq && found.head.hash !== remembered.head.hash)))
