/**
 * Every row of a table in the order of an index, some hundred at a time. A row that the browser cannot read any more (its
 * file was lost) is told by its key and spoils no other.
 */
import type { Table } from 'dexie'

export type Row<R, K> =
  | { readonly ok: true; readonly row: R }
  | { readonly ok: false; readonly key: K; readonly problem: string }

const CHUNK = 500

/** @param index a name of an index that holds every row, such as '[log+seq]' or ':id' for the primary key */
export async function* eachChunk<R, K>(table: Table<R, K>, index = ':id'): AsyncGenerator<readonly Row<R, K>[]> {
  const keys = await table.orderBy(index).primaryKeys()
  for (let start = 0; start < keys.length; start += CHUNK) {
    const chunk = keys.slice(start, start + CHUNK)
    try {
      const rows = await table.bulkGet(chunk)
      yield rows.flatMap((row) => (row === undefined ? [] : [{ ok: true as const, row }])) // gone meanwhile: forgotten
    } catch {
      const rows: Row<R, K>[] = []
      for (const key of chunk) rows.push(...(await one(table, key)))
      yield rows
    }
  }
}

async function one<R, K>(table: Table<R, K>, key: K): Promise<readonly Row<R, K>[]> {
  try {
    const row = await table.get(key)
    return row === undefined ? [] : [{ ok: true, row }]
  } catch (error) {
    return [{ ok: false, key, problem: String(error) }]
  }
}
