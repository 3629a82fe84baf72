/** All that a job's view is made of: read by index, or what was known of it with some more events. */
import { endAfter, inOrder, orderEnd } from '../domain/records/event-order'
import { readEvent } from '../domain/records/read-event'
import type { AnyEvent } from '../domain/records/read-event'
import { readFact, readable } from '../domain/records/read-fact'
import type { Unread } from '../domain/records/read-fact'
import type { Hash, Id } from '../domain/records/scalars'
import type { Subject, ViewRules } from '../domain/records/view-rules'
import type { Book, EventRow } from './book'
import type { KnownJob } from './job-memory'
import { recordOf } from './rows'

export type ToldJob = Omit<KnownJob, 'views'>

export async function jobStory(book: Book, rules: ViewRules, job: Id): Promise<ToldJob> {
  const { events } = await jobEvents(book, job)
  const fold = events.reduce((before, event) => rules.after(before, event), rules.begin)
  const on = rules.standsOn(fold)
  const rows = await book.heads.bulkGet(on.subjects.map(({ kind, subject }): [string, Id] => [kind, subject]))
  const hashes = [...new Set([...on.facts, ...rows.flatMap((row) => row?.heads ?? [])])]
  const stored = (await book.facts.bulkGet(hashes)).filter((row) => row !== undefined)
  const facts = readable(stored.map((row) => readFact(recordOf(row))))
  const named = new Set([...facts, ...events].flatMap((record) => rules.personalOf(record)))
  const personal = await personalNamed(book, [...named])
  return { story: { job, fold, facts, personal }, end: orderEnd(events), named, standsOn: standsOn(on.subjects, named) }
}

/** Undefined where it has to be read after all: an event that comes before others, or one that needs other facts. */
export async function storyWith(
  book: Book,
  rules: ViewRules,
  known: KnownJob,
  events: readonly AnyEvent[],
): Promise<ToldJob | undefined> {
  const { story } = known
  let { end } = known
  for (const event of events) {
    const next = endAfter(end, event)
    if (next === undefined) return undefined
    end = next
  }
  const fold = events.reduce((before, event) => rules.after(before, event), story.fold)
  const on = rules.standsOn(fold)
  if (JSON.stringify(on) !== JSON.stringify(rules.standsOn(story.fold))) return undefined
  const added = events.flatMap((event) => rules.personalOf(event)).filter((hash) => !known.named.has(hash))
  if (added.length === 0) return { ...known, story: { ...story, fold }, end }
  const named = new Set([...known.named, ...added])
  const personal = [...story.personal, ...(await personalNamed(book, [...new Set(added)]))]
  return { story: { ...story, fold, personal }, end, named, standsOn: standsOn(on.subjects, named) }
}

const standsOn = (subjects: readonly Subject[], named: ReadonlySet<Hash>): readonly string[] => [
  ...new Set([...subjects.map(({ subject }) => subject), ...named]),
]

const personalNamed = async (book: Book, named: Hash[]) =>
  named.length === 0 ? [] : (await book.personal.bulkGet(named)).filter((row) => row !== undefined)

export async function jobEvents(
  book: Book,
  job: Id,
): Promise<{ readonly events: readonly AnyEvent[]; readonly unread: readonly Unread[] }> {
  const results = (await book.events.where('job').equals(job).toArray()).map(readOnce)
  return {
    events: inOrder(results.flatMap((result) => (result.kind === 'ok' ? [result.event] : []))),
    unread: results.filter((result) => result.kind !== 'ok'),
  }
}

/** Events never change, so each is read by its schema once; the newest few thousand are remembered. */
const READ_LIMIT = 5000
const alreadyRead = new Map<Hash, ReturnType<typeof readEvent>>()
function readOnce(row: EventRow): ReturnType<typeof readEvent> {
  const before = alreadyRead.get(row.hash)
  if (before) return before
  const result = readEvent(recordOf(row))
  if (result.kind !== 'ok') return result
  alreadyRead.set(row.hash, result)
  if (alreadyRead.size > READ_LIMIT) alreadyRead.delete(alreadyRead.keys().next().value as Hash)
  return result
}
