/** Makes the views again that stand on what was just written, in the same transaction. */
import type { Change } from '../domain/ports'
import { heads } from '../domain/records/heads'
import type { AnyEvent } from '../domain/records/read-event'
import { readFact, readable } from '../domain/records/read-fact'
import type { AnyFact } from '../domain/records/read-fact'
import type { Hash, Id } from '../domain/records/scalars'
import type { ArrowRow, ViewRules } from '../domain/records/view-rules'
import type { Book } from './book'
import { inSlices } from './in-slices'
import type { KnownJob, KnownJobs } from './job-memory'
import { jobStory, storyWith } from './job-story'
import type { ToldJob } from './job-story'
import { recordOf } from './rows'

export interface Refreshed {
  readonly change: Change
  /** Every job whose views were made again, as it now stands. */
  readonly known: KnownJobs
}

export interface WrittenRecords {
  readonly facts: readonly AnyFact[]
  readonly events: readonly AnyEvent[]
  /** Personal data removed. */
  readonly forgotten: readonly Hash[]
}

/**
 * @param known jobs of which nothing was written since
 * @param wrote told how many rows of the views were just written, of many
 */
export async function refreshViews(
  book: Book,
  rules: ViewRules,
  written: WrittenRecords,
  known: KnownJobs,
  wrote: (rows: number) => void = () => {},
): Promise<Refreshed> {
  const subjects =
    written.facts.length + written.forgotten.length === 0 ? [] : await refreshHeads(book, rules, written, wrote)
  const jobs = await refreshJobs(book, rules, written, subjects, known)
  const lots = new Set([...jobs.lots, ...(await addToLots(book, rules, written, wrote))])
  const saved = {
    records: written.facts.length + written.events.length,
    jobs: [...jobs.known.values()].flatMap(({ views }) => views?.job ?? []),
  }
  return { change: { jobs: [...jobs.known.keys()], subjects, lots: [...lots], saved }, known: jobs.known }
}

async function refreshHeads(
  book: Book,
  rules: ViewRules,
  { facts, forgotten }: WrittenRecords,
  wrote: (rows: number) => void,
): Promise<readonly Id[]> {
  const keys = new Map(facts.map((fact) => [`${fact.kind} ${fact.subject}`, [fact.kind, fact.subject] as [string, Id]]))
  const named = forgotten.length === 0 ? [] : await book.heads.where('standsOn').anyOf(forgotten).primaryKeys()
  for (const [kind, subject] of named) keys.set(`${kind} ${subject}`, [kind, subject])
  const first = await putFirstVersions(book, rules, facts, [...keys.values()], wrote)
  for (const [name, key] of keys) if (!first.has(name)) await refreshHead(book, rules, key)
  return [...keys.values()].map(([, subject]) => subject)
}

/** Subjects of which this is the first and only version, many at once: a table of parts brings thousands. */
async function putFirstVersions(
  book: Book,
  rules: ViewRules,
  facts: readonly AnyFact[],
  keys: [string, Id][],
  wrote: (rows: number) => void,
): Promise<ReadonlySet<string>> {
  if (keys.length < MANY) return new Set()
  const known = await book.heads.bulkGet(keys)
  const versions = new Map<string, AnyFact[]>()
  for (const fact of facts) {
    const name = `${fact.kind} ${fact.subject}`
    versions.set(name, [...(versions.get(name) ?? []), fact])
  }
  const rows = keys.flatMap(([kind, subject], i) => {
    const [fact, ...others] = versions.get(`${kind} ${subject}`) ?? []
    if (known[i] !== undefined || fact === undefined || others.length > 0) return []
    if (rules.personalOf(fact).length > 0) return []
    const words = [...new Set(rules.wordsOf(fact, []))].sort()
    return [{ kind, subject, heads: [fact.hash], words, standsOn: [], of: rules.partOf(fact) }]
  })
  await inSlices(rows, (slice) => book.heads.bulkPut(slice), wrote)
  return new Set(rows.map(({ kind, subject }) => `${kind} ${subject}`))
}

const MANY = 20

/** One subject's heads and the words it is found by. */
export async function refreshHead(book: Book, rules: ViewRules, [kind, subject]: [string, Id]): Promise<void> {
  const rows = await book.facts.where('[kind+subject]').equals([kind, subject]).toArray()
  const ends = heads(rows.map(recordOf))
  const facts = readable(ends.map((fact) => readFact(fact)))
  const standsOn = [...new Set(facts.flatMap((fact) => rules.personalOf(fact)))]
  const personal = (await book.personal.bulkGet(standsOn)).filter((row) => row !== undefined)
  const words = [...new Set(facts.flatMap((fact) => rules.wordsOf(fact, personal)))].sort()
  const of = [...new Set(facts.flatMap((fact) => rules.partOf(fact)))]
  await book.heads.put({ kind, subject, heads: ends.map((fact) => fact.hash), words, standsOn, of })
}

async function refreshJobs(
  book: Book,
  rules: ViewRules,
  { events, forgotten }: WrittenRecords,
  subjects: readonly Id[],
  before: KnownJobs,
): Promise<{ readonly known: KnownJobs; readonly lots: ReadonlySet<Id> }> {
  const jobs = new Set(events.flatMap((event) => event.job ?? []))
  for (const id of await standingOn(book, [...subjects, ...forgotten])) jobs.add(id)
  const isPlain = subjects.length + forgotten.length === 0
  const lots = new Set<Id>()
  const known = new Map<Id, KnownJob>()
  for (const job of jobs) {
    const own = isPlain ? before.get(job) : undefined
    const more = events.filter((event) => event.job === job)
    const told = own && (await storyWith(book, rules, own, more))
    const now = await putJob(book, rules, told ?? (await jobStory(book, rules, job)), told && own)
    for (const lot of now.lots) lots.add(lot)
    known.set(job, now.known)
  }
  return { known, lots }
}

const standingOn = async (book: Book, what: readonly string[]): Promise<readonly Id[]> =>
  what.length === 0 ? [] : book.jobView.where('standsOn').anyOf(what).primaryKeys()

/** One job's view and those of its arrows, from its whole story. @returns the lots that now stand otherwise */
export async function refreshJob(book: Book, rules: ViewRules, job: Id): Promise<readonly Id[]> {
  return (await putJob(book, rules, await jobStory(book, rules, job))).lots
}

/** @param before what is stored of it, where that is known: only what differs is written */
async function putJob(
  book: Book,
  rules: ViewRules,
  told: ToldJob,
  before?: KnownJob,
): Promise<{ readonly known: KnownJob; readonly lots: readonly Id[] }> {
  const { job } = told.story
  const views = rules.jobViews(told.story)
  const known = { ...told, views }
  if (!views) return { known, lots: [] }
  const arrows = before?.views ? differing(views.arrows, before.views.arrows) : views.arrows
  const lotsBefore = before?.views?.job.lots ?? (await book.jobView.get(job))?.lots ?? []
  const shareBefore = (lot: Id) => before?.views?.shares.get(lot)
  const touched = [...new Set([...lotsBefore, ...views.job.lots])].filter(
    (lot) => before === undefined || !isSame(views.shares.get(lot), shareBefore(lot)),
  )
  const old = touched.length === 0 ? [] : await book.lotView.bulkGet(touched)
  const rows = touched
    .map((lot, i) => rules.lotWithJob(lot, old[i], job, views.shares.get(lot)))
    .filter((now, i) => !isSame(now, old[i]))
  const row = { ...views.job, standsOn: told.standsOn }
  const isStored = before?.views !== undefined && isSame(row, { ...before.views.job, standsOn: before.standsOn })
  await Promise.all([
    ...(isStored ? [] : [book.jobView.put(row)]),
    ...(arrows.length === 0 ? [] : [book.arrowView.bulkPut([...arrows])]),
    ...(rows.length === 0 ? [] : [book.lotView.bulkPut(rows)]),
  ])
  return { known, lots: rows.map(({ id }) => id) }
}

const isSame = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)

function differing(now: readonly ArrowRow[], before: readonly ArrowRow[]): readonly ArrowRow[] {
  const old = new Map(before.map((arrow) => [arrow.id, arrow]))
  return now.filter((arrow) => !isSame(arrow, old.get(arrow.id)))
}

async function addToLots(
  book: Book,
  rules: ViewRules,
  { facts, events }: WrittenRecords,
  wrote: (rows: number) => void,
): Promise<readonly Id[]> {
  const told = new Map<Id, (AnyFact | AnyEvent)[]>()
  for (const record of [...facts, ...events]) {
    for (const lot of new Set(rules.lotsOf(record))) told.set(lot, [...(told.get(lot) ?? []), record])
  }
  const lots = [...told.keys()]
  if (lots.length === 0) return []
  const before = await book.lotView.bulkGet(lots)
  const rows = lots.map((lot, i) => rules.lotView(lot, before[i], told.get(lot)!))
  await inSlices(rows, (slice) => book.lotView.bulkPut(slice), wrote)
  return lots
}
