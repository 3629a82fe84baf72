/** Tables of the whole book for a spreadsheet, written job by job. */
import { BUILDS_HEADER, buildsCsv } from '../domain/bench/builds-csv'
import { READINGS_HEADER, readingsCsv } from '../domain/bench/readings-csv'
import { readFact, readable } from '../domain/records/read-fact'
import type { FactOf } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import type { Book } from './book'
import { eachChunk } from './each-row'
import { jobEvents } from './job-story'
import { recordOf } from './rows'

type Write = (text: string) => Promise<void> | void

export async function exportReadings(book: Book, write: Write): Promise<void> {
  await write(READINGS_HEADER)
  for (const job of (await book.events.orderBy('job').uniqueKeys()) as Id[]) {
    const rows = readingsCsv((await jobEvents(book, job)).events)
    if (rows !== '') await write(rows)
  }
}

export async function exportBuilds(book: Book, write: Write): Promise<void> {
  await write(BUILDS_HEADER)
  for await (const chunk of eachChunk(book.heads)) {
    const hashes = chunk.flatMap((each) => (each.ok && each.row.kind === 'asBuilt' ? each.row.heads : []))
    for (const asBuilt of await factsOf(book, 'asBuilt', hashes)) {
      const arrows = await factsOf(book, 'arrowBuilt', asBuilt.body.arrows)
      await write(buildsCsv(asBuilt, arrows))
    }
  }
}

async function factsOf<K extends 'asBuilt' | 'arrowBuilt'>(
  book: Book,
  kind: K,
  hashes: readonly string[],
): Promise<readonly FactOf<K>[]> {
  const rows = (await book.facts.bulkGet([...hashes])).filter((row) => row?.kind === kind)
  return readable(rows.map((row) => readFact(recordOf(row!)))) as unknown as readonly FactOf<K>[] // the filter above says so
}
