/** Checks a whole book, or what was added since it was last checked: every hash, every log, every reference. */
import type { Table } from 'dexie'
import { fitsHash, follow, startOf } from '../domain/records/chain'
import type { BookProblem, BookReport } from '../domain/records/book-report'
import type { LogHead } from '../domain/records/event'
import { readEvent } from '../domain/records/read-event'
import type { AnyEvent } from '../domain/records/read-event'
import { readFact } from '../domain/records/read-fact'
import type { AnyFact } from '../domain/records/read-fact'
import type { Hash, Id } from '../domain/records/scalars'
import type { ViewRules } from '../domain/records/view-rules'
import type { Book } from './book'
import { eachChunk } from './each-row'
import { recordOf } from './rows'

/** How many problems a report lists before it only goes on counting. */
const LISTED = 1000

/** @param progress hears how many records were checked so far */
export async function verify(
  book: Book,
  rules: ViewRules,
  progress: (checked: number) => void = () => {},
): Promise<BookReport> {
  const problems: BookProblem[] = []
  const note = (...found: BookProblem[]) => problems.push(...found.slice(0, Math.max(0, LISTED - problems.length)))
  const count = { facts: 0, events: 0, personal: 0, tooNew: 0 }
  const checked = () => progress(count.facts + count.events + count.personal)

  const named = new Map<Hash, Hash>() // what a record names, and which
  const names = (record: AnyFact | AnyEvent) => {
    const photo = 'what' in record && record.what === 'photographed' ? [record.body.photo] : []
    for (const hash of [...rules.personalOf(record), ...photo]) named.set(hash, record.hash)
  }
  const parents: { fact: Hash; parent: Hash }[] = []
  const facts = new Set<Hash>()
  for await (const chunk of eachChunk(book.facts)) {
    for (const each of chunk) {
      count.facts += 1
      if (!each.ok) {
        note({ problem: 'unreadable', table: 'facts', key: each.key, detail: each.problem })
        continue
      }
      const read = readFact(recordOf(each.row))
      facts.add(each.row.hash)
      parents.push(...each.row.parents.map((parent) => ({ fact: each.row.hash, parent })))
      if (read.kind === 'ok') names(read.fact)
      if (read.kind === 'too-new') count.tooNew += 1
      if (read.kind === 'unreadable')
        note({ problem: 'unreadable', table: 'facts', key: each.row.hash, detail: read.problem })
    }
    checked()
  }
  note(
    ...parents.flatMap(({ fact, parent }) =>
      facts.has(parent) ? [] : [{ problem: 'parent missing' as const, fact, parent }],
    ),
  )

  const logs = new Map<Id, LogHead>()
  for await (const chunk of eachChunk(book.events, '[log+seq]')) {
    for (const each of chunk) {
      count.events += 1
      if (!each.ok) {
        note({ problem: 'unreadable', table: 'events', key: each.key, detail: each.problem })
        continue
      }
      const event = recordOf(each.row)
      const step = follow(logs.get(event.log) ?? startOf(event.log), event)
      logs.set(event.log, step.head)
      note(...step.problems)
      const read = readEvent(event)
      if (read.kind === 'ok') names(read.event)
      if (read.kind === 'too-new') count.tooNew += 1
      if (read.kind === 'unreadable')
        note({ problem: 'unreadable', table: 'events', key: event.hash, detail: read.problem })
    }
    checked()
  }

  for await (const chunk of eachChunk(book.personal)) {
    for (const each of chunk) {
      count.personal += 1
      if (!each.ok) note({ problem: 'unreadable', table: 'personal', key: each.key, detail: each.problem })
      else if (!fitsHash(each.row)) note({ problem: 'changed record', table: 'personal', key: each.row.hash })
    }
    checked()
  }
  note(...(await namedMissing(book, named)))
  return { ...count, problems, logs: [...logs.values()] }
}

async function namedMissing(book: Book, named: ReadonlyMap<Hash, Hash>): Promise<BookProblem[]> {
  const hashes = [...named.keys()]
  const keys = await Promise.all(
    [book.personal, book.photos, book.forgotten].map((table: Table<unknown, Hash>) =>
      table.where('hash').anyOf(hashes).primaryKeys(),
    ),
  )
  const there = new Set(keys.flat())
  return hashes.flatMap((hash) =>
    there.has(hash) ? [] : [{ problem: 'named missing' as const, record: named.get(hash)!, named: hash }],
  )
}
