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
  for await (const chunk of index === ':id' ? allKeys(table) : pagedKeys(table, index)) {
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

/** As they stood at the beginning: a fact that comes in meanwhile must not be told without one that it names. */
async function* allKeys<R, K>(table: Table<R, K>): AsyncGenerator<K[]> {
  const keys = await table.toCollection().primaryKeys()
  for (let start = 0; start < keys.length; start += CHUNK) yield keys.slice(start, start + CHUNK)
}

/**
 * The keys of a long table, a page at a time, so that what is held does not grow with the book. Several rows may stand at
 * one place of the index; what comes in behind the place reached is told as well.
 */
async function* pagedKeys<R, K>(table: Table<R, K>, index: string): AsyncGenerator<K[]> {
  let place: unknown
  let told = new Set<string>() // at this place or after it
  for (;;) {
    const { keys, end } = await page(table, index, place, told)
    if (keys.length === 0) return
    const names = keys.map((key) => JSON.stringify(key))
    told = new Set(JSON.stringify(end) === JSON.stringify(place) ? [...told, ...names] : names)
    place = end
    yield keys
  }
}

const page = <R, K>(table: Table<R, K>, index: string, place: unknown, told: ReadonlySet<string>) =>
  table.db.transaction('r', table, async () => {
    const range = () => (place === undefined ? table.orderBy(index) : table.where(index).aboveOrEqual(place))
    const found = await range()
      .limit(CHUNK + told.size)
      .primaryKeys()
    const keys = found.filter((key) => !told.has(JSON.stringify(key))).slice(0, CHUNK)
    if (keys.length === 0) return { keys, end: place }
    const last = found.indexOf(keys.at(-1)!)
    const [end] = await range().offset(last).limit(1).keys()
    return { keys, end: end as unknown }
  })

async function one<R, K>(table: Table<R, K>, key: K): Promise<readonly Row<R, K>[]> {
  try {
    const row = await table.get(key)
    return row === undefined ? [] : [{ ok: true, row }]
  } catch (error) {
    return [{ ok: false, key, problem: String(error) }]
  }
}
