/** The fence: old code can open a newer book, so every transaction that writes asks the book first. */
import type { Tally } from '../domain/ports'
import { SCHEMA } from './book'
import type { Book, MetaRow } from './book'

export class NewerBook extends Error {
  override readonly name = 'NewerBook'
  readonly stored: number
  constructor(stored: number) {
    super(`The book has schema ${stored}; this app knows ${SCHEMA}`)
    this.stored = stored
  }
}

/** Inside a write transaction. @throws NewerBook, which aborts it */
export async function fence(book: Book): Promise<void> {
  pass((await book.meta.get('schema'))?.value)
}

/** The fence and, with the same question, where the book stands. @throws NewerBook; when the book was never founded */
export async function fencedTally(book: Book): Promise<{ readonly tally: Tally; readonly imports: number }> {
  const rows = await book.meta.where('key').between('imports', 'tally', true, true).toArray() // one call for all three
  const valueOf = (asked: MetaRow['key']) => rows.find(({ key }) => key === asked)?.value
  pass(valueOf('schema'))
  const tally = valueOf('tally') as Tally | undefined
  if (tally === undefined) throw new Error('The book was never founded')
  return { tally, imports: (valueOf('imports') as number | undefined) ?? 0 }
}

function pass(stored: unknown): void {
  if (typeof stored === 'number' && stored > SCHEMA) throw new NewerBook(stored)
}
