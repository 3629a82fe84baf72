/** One command in one strict transaction: facts, events hung on the log, personal data, and the views of what changed. */
import { chained } from '../domain/records/event'
import type { Event } from '../domain/records/event'
import type { Fact } from '../domain/records/fact'
import type { Change, Command, Tally } from '../domain/ports'
import type { AnyEvent } from '../domain/records/read-event'
import type { AnyFact } from '../domain/records/read-fact'
import type { ViewRules } from '../domain/records/view-rules'
import type { Book } from './book'
import { fencedTally } from './fence'
import { inSlices, SLICE } from './in-slices'
import { forget } from './forget'
import type { JobMemory } from './job-memory'
import { setMeta, stampOf } from './meta'
import { refreshViews } from './refresh-views'
import { recordOf } from './rows'
import type { WrittenRows } from './second-copy/lines-of'

export interface Written {
  /** An earlier try had written it already. */
  readonly again: boolean
  readonly events: readonly Event[]
  readonly tally: Tally
  readonly change: Change
  /** What was written, for the second copy; left out where that would be a whole backup. */
  readonly rows?: WrittenRows
}

/**
 * Resolves when the command is on the disk. The command was checked before: see `checkCommand`. Nothing but the book is
 * awaited in here; hashes and views are made synchronously.
 *
 * @param alive told, each time the disk has answered, the share that is written: each record once, and once in the views
 */
export async function writeCommand(
  book: Book,
  rules: ViewRules,
  command: Command,
  memory: JobMemory,
  alive: (share: number) => void = () => {},
): Promise<Written> {
  const { written, remember } = await book.transaction('rw', book.tables, async () =>
    write(book, rules, command, memory, alive),
  )
  remember() // not before it is on the disk
  return written
}

async function write(
  book: Book,
  rules: ViewRules,
  command: Command,
  memory: JobMemory,
  alive: (share: number) => void,
): Promise<{ readonly written: Written; readonly remember: () => void }> {
  const facts = (command.facts ?? []) as readonly AnyFact[]
  const [{ tally, imports }, there] = await Promise.all([
    fencedTally(book),
    facts.length === 0 ? [] : book.facts.bulkGet(facts.map((fact) => fact.hash)),
  ])
  const stamp = stampOf(tally, imports)
  const before = memory.isNew(command.id, stamp)
    ? []
    : await book.events.where('command').equals(command.id).sortBy('seq')
  const fresh = facts.filter((_, i) => there[i] === undefined)
  if (before.length > 0 || (fresh.length === 0 && facts.length > 0 && !command.events?.length)) {
    return { written: { again: true, events: before.map(recordOf), tally, change: NOTHING }, remember: () => {} }
  }

  const events = chained(tally.head, {
    ...command,
    events: (command.events ?? []) as readonly AnyEvent[],
  }) as readonly AnyEvent[]
  const last = events.at(-1)
  const now: Tally = {
    facts: tally.facts + fresh.length,
    events: tally.events + events.length,
    head: last ? { log: last.log, seq: last.seq, hash: last.hash } : tally.head,
  }
  const total = 2 * (fresh.length + events.length)
  let done = 0
  const wrote = (rows: number) => {
    done += rows
    alive(Math.min(1, done / total))
  }
  const factRows = fresh.map((fact) => ({ ...(fact as Fact), lots: rules.lotsOf(fact) }))
  const eventRows = events.map((event) => ({ ...(event as Event), lots: rules.lotsOf(event) }))
  const records = Promise.all([
    inSlices(factRows, (rows) => book.facts.bulkAdd(rows), wrote),
    inSlices(eventRows, (rows) => book.events.bulkAdd(rows), wrote),
    setMeta(book, 'tally', now),
  ])
  // What fits in one slice is on its way already: the views go after it and the browser is called once instead of thrice.
  if (Math.max(fresh.length, events.length) > SLICE) await records
  const forgotten = await forget(book, fresh)
  const apart = await putPersonal(book, command)
  const [{ change, known }] = await Promise.all([
    refreshViews(book, rules, { facts: fresh, events, forgotten }, memory.recall(stamp), wrote),
    records,
  ])
  return {
    written: {
      again: false,
      events: events as readonly Event[],
      tally: now,
      change: forgotten.length > 0 ? { ...change, forgotten: true } : change,
      rows: { facts: fresh, events, ...apart },
    },
    remember: () => memory.keep(stamp, stampOf(now, imports), known),
  }
}

const NOTHING: Change = { jobs: [], subjects: [], lots: [] }

/** What was forgotten stays forgotten, even when it is handed in again. */
async function putPersonal(book: Book, { personal = [], photos = [] }: Command) {
  if (personal.length + photos.length === 0) return { personal, photos }
  const gone = await book.forgotten.bulkGet([...personal, ...photos].map((row) => row.hash))
  const kept = {
    personal: personal.filter((_, i) => gone[i] === undefined),
    photos: photos.filter((_, i) => gone[personal.length + i] === undefined),
  }
  await book.personal.bulkPut(kept.personal)
  await book.photos.bulkPut(kept.photos)
  return kept
}
