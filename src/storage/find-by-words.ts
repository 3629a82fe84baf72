/** Keys of the rows that have, for each word asked, a word beginning with it; from the index alone, no row is read. */
import type { Table } from 'dexie'

export async function findByWords<Key>(
  table: Pick<Table<unknown, Key>, 'where'>,
  words: readonly string[],
): Promise<readonly Key[]> {
  // Not `distinct()`: that walks the index with a cursor, one answer of the browser a row.
  const found = await Promise.all(words.map((word) => table.where('words').startsWith(word).primaryKeys()))
  const [fewest, ...others] = found
    .map((keys) => new Map(keys.map((key) => [String(key), key])))
    .toSorted((a, b) => a.size - b.size)
  if (fewest === undefined) return []
  return [...fewest].flatMap(([name, key]) => (others.every((keys) => keys.has(name)) ? [key] : []))
}
