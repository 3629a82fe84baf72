/**
 * A rescue that was itself cut short can leave records in the tables that the book does not count and no list shows. They
 * are counted anew and the views are made of them. Only asked where something is wrong already: it reads the whole book.
 */
import type { Tally } from '../domain/ports'
import type { ViewRules } from '../domain/records/view-rules'
import type { Book } from './book'
import { setMeta, tallyOf } from './meta'
import { rebuildAllViews } from './rebuild-views'

/** @returns the tally as it is now, or undefined where it was right */
export function settle(book: Book, rules: ViewRules): Promise<Tally | undefined> {
  return book.transaction('rw', book.tables, async () => {
    const tally = await tallyOf(book)
    const settled = { ...tally, facts: await book.facts.count(), events: await book.events.count() }
    if (settled.facts === tally.facts && settled.events === tally.events) return undefined
    await setMeta(book, 'tally', settled)
    await rebuildAllViews(book, rules)
    return settled
  })
}
