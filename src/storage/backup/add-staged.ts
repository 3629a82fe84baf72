/** Adds what was staged, in one strict transaction: all of it or nothing, with the views of all that changed. */
import type { Table } from 'dexie'
import type { Change, Tally } from '../../domain/ports'
import { readEvent } from '../../domain/records/read-event'
import type { AnyEvent } from '../../domain/records/read-event'
import { readFact } from '../../domain/records/read-fact'
import type { AnyFact } from '../../domain/records/read-fact'
import type { Hash, Id } from '../../domain/records/scalars'
import type { ViewRules } from '../../domain/records/view-rules'
import type { Book, StagedRow } from '../book'
import { fence } from '../fence'
import { forget } from '../forget'
import { meta, setMeta, tallyOf } from '../meta'
import { refreshHead, refreshJob } from '../refresh-views'
import { recordOf } from '../rows'

export interface Added {
  readonly tally: Tally
  readonly change: Change
}

const CHUNK = 500

/** @param progress told the share of it that is done: half of it the records, half the views made of them */
export function addStaged(book: Book, rules: ViewRules, progress: (share: number) => void = () => {}): Promise<Added> {
  return book.transaction('rw', book.tables, async () => {
    await fence(book)
    const tally = await tallyOf(book)
    const total = await book.staged.count()
    let added = 0
    const wrote = (rows: number) => progress((added += rows) / total / 2)
    const touched: Touched = { jobs: new Set(), subjects: new Map(), lots: new Map() }
    const personal: Hash[] = [] // come or gone: views that stand on it are made again
    let forgotten = false
    let [facts, events] = [0, 0]
    let { head } = tally

    // Redactions are facts, and facts come first, so that nothing is added only to be forgotten.
    await inChunks(book, 'fact', async (rows) => {
      await book.facts.bulkAdd(rows.map((row) => row.record))
      const gone = await forget(
        book,
        rows.map((row) => row.record),
      )
      personal.push(...gone)
      forgotten ||= gone.length > 0
      for (const { record } of rows) {
        touched.subjects.set(`${record.kind} ${record.subject}`, [record.kind, record.subject])
        const read = record.lots.length === 0 ? undefined : readFact(recordOf(record))
        if (read?.kind === 'ok') tellLots(touched, record.lots, read.fact)
      }
      facts += rows.length
      wrote(rows.length)
    })
    await inChunks(book, 'event', async (rows) => {
      await book.events.bulkAdd(rows.map((row) => row.record))
      for (const { record } of rows) {
        if (record.job !== null) touched.jobs.add(record.job)
        const read = record.lots.length === 0 ? undefined : readEvent(recordOf(record))
        if (read?.kind === 'ok') tellLots(touched, record.lots, read.event)
        if (record.log === head.log && record.seq > head.seq)
          head = { log: record.log, seq: record.seq, hash: record.hash }
      }
      events += rows.length
      wrote(rows.length)
    })
    await inChunks(book, 'personal', async (rows) => {
      const kept = await unforgotten(
        book,
        rows.map((row) => row.record),
      )
      await book.personal.bulkPut(kept)
      personal.push(...kept.map((row) => row.hash))
      wrote(rows.length)
    })
    await inChunks(book, 'photo', async (rows) => {
      await book.photos.bulkPut(
        await unforgotten(
          book,
          rows.map((row) => row.record),
        ),
      )
    })
    await book.staged.clear()

    const now: Tally = { facts: tally.facts + facts, events: tally.events + events, head }
    await setMeta(book, 'tally', now)
    await setMeta(book, 'imports', ((await meta(book, 'imports')) ?? 0) + 1)
    const change = await refreshAll(book, rules, touched, personal, (share) => progress(0.5 + share / 2))
    return { tally: now, change: forgotten ? { ...change, forgotten: true } : change }
  })
}

/** What the file says something new about. */
interface Touched {
  readonly jobs: Set<Id>
  readonly subjects: Map<string, [string, Id]>
  /** What it says of each lot outside the jobs. */
  readonly lots: Map<Id, (AnyFact | AnyEvent)[]>
}

function tellLots({ lots }: Touched, about: readonly Id[], record: AnyFact | AnyEvent): void {
  for (const lot of new Set(about)) lots.set(lot, [...(lots.get(lot) ?? []), record])
}

async function refreshAll(
  book: Book,
  rules: ViewRules,
  touched: Touched,
  personal: readonly Hash[],
  progress: (share: number) => void,
): Promise<Change> {
  const named = await standingOn(book.heads, personal)
  for (const [kind, subject] of named) touched.subjects.set(`${kind} ${subject}`, [kind, subject])
  const lots = new Set<Id>()
  let made = 0
  const step = () => progress((made += 1) / (touched.subjects.size + touched.jobs.size + touched.lots.size))
  for (const subject of touched.subjects.values()) {
    await refreshHead(book, rules, subject)
    step()
  }

  const subjects = [...touched.subjects.values()].map(([, subject]) => subject)
  for (const job of await standingOn(book.jobView, [...subjects, ...personal])) touched.jobs.add(job)
  for (const job of touched.jobs) {
    for (const lot of await refreshJob(book, rules, job)) lots.add(lot)
    step()
  }
  for (const [lot, records] of touched.lots) {
    await book.lotView.put(rules.lotView(lot, await book.lotView.get(lot), records))
    lots.add(lot)
    step()
  }
  return { jobs: [...touched.jobs], subjects, lots: [...lots] }
}

/** Keys of the views that must be made again for any of these. */
async function standingOn<K>(table: Table<unknown, K>, what: readonly string[]): Promise<readonly K[]> {
  const keys: K[] = []
  for (let i = 0; i < what.length; i += CHUNK) {
    keys.push(
      ...(await table
        .where('standsOn')
        .anyOf(what.slice(i, i + CHUNK))
        .primaryKeys()),
    )
  }
  return keys
}

type StagedOf<K extends StagedRow['kind']> = Extract<StagedRow, { kind: K }>

async function inChunks<K extends StagedRow['kind']>(
  book: Book,
  kind: K,
  add: (rows: readonly StagedOf<K>[]) => Promise<void>,
): Promise<void> {
  const after = (hash: Hash) => book.staged.where('[kind+hash]').between([kind, hash], [kind, []], false)
  let rows: StagedRow[] = await after('').limit(CHUNK).toArray()
  while (rows.length > 0) {
    await add(rows as unknown as StagedOf<K>[])
    rows = await after(rows.at(-1)!.hash).limit(CHUNK).toArray()
  }
}

async function unforgotten<R extends { readonly hash: Hash }>(book: Book, rows: readonly R[]): Promise<R[]> {
  const gone = await book.forgotten.bulkGet(rows.map((row) => row.hash))
  return rows.filter((_, i) => gone[i] === undefined)
}
