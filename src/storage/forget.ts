/** Carries a redaction out: removes what it names, and remembers the hashes against copies that arrive later. */
import { forgottenBy } from '../domain/records/redaction'
import type { Hash } from '../domain/records/scalars'
import type { Book } from './book'

/** Inside a write transaction. Returns what is forgotten now. */
export async function forget(book: Book, facts: Parameters<typeof forgottenBy>[0][]): Promise<readonly Hash[]> {
  const hashes = facts.flatMap(forgottenBy)
  if (hashes.length === 0) return []
  await book.forgotten.bulkPut(hashes.map((hash) => ({ hash })))
  await book.personal.bulkDelete(hashes)
  await book.photos.bulkDelete(hashes)
  return hashes
}
