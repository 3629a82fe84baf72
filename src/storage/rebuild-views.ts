/** Makes every view anew from the records: after a merge, and whenever a view is doubted. */
import type { AnyEvent } from '../domain/records/read-event'
import type { AnyFact } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { readEvent } from '../domain/records/read-event'
import { readFact } from '../domain/records/read-fact'
import type { ViewRules } from '../domain/records/view-rules'
import type { Book } from './book'
import { jobStory } from './job-story'
import { refreshHead, refreshJob } from './refresh-views'
import { recordOf } from './rows'

/** Inside a write transaction over every table. */
export async function rebuildAllViews(book: Book, rules: ViewRules): Promise<void> {
  await Promise.all([book.heads.clear(), book.jobView.clear(), book.arrowView.clear(), book.lotView.clear()])
  const subjects = (await book.facts.orderBy('[kind+subject]').uniqueKeys()) as unknown as [string, Id][]
  for (const subject of subjects) await refreshHead(book, rules, subject)
  for (const job of (await book.events.orderBy('job').uniqueKeys()) as Id[]) await refreshJob(book, rules, job)
  const lots = new Set([
    ...(await book.facts.orderBy('lots').uniqueKeys()),
    ...(await book.events.orderBy('lots').uniqueKeys()),
    ...(await book.jobView.orderBy('lots').uniqueKeys()),
  ])
  const told: SharesTold = new Map()
  for (const lot of lots as Set<Id>) await rebuildLot(book, rules, lot, told)
}

/** What jobs mean to their lots, by job: worked out once for all the lots of one rebuilding. */
type SharesTold = Map<Id, ReadonlyMap<Id, unknown> | undefined>

/** One lot's view, from every record that says something about it and every job's view that does. */
async function rebuildLot(book: Book, rules: ViewRules, lot: Id, told: SharesTold): Promise<void> {
  const facts = (await book.facts.where('lots').equals(lot).toArray()).map((row) => readFact(recordOf(row)))
  const events = (await book.events.where('lots').equals(lot).toArray()).map((row) => readEvent(recordOf(row)))
  const records: (AnyFact | AnyEvent)[] = [
    ...facts.flatMap((read) => (read.kind === 'ok' ? [read.fact] : [])),
    ...events.flatMap((read) => (read.kind === 'ok' ? [read.event] : [])),
  ]
  let view = rules.lotView(lot, undefined, records)
  for (const job of await book.jobView.where('lots').equals(lot).primaryKeys()) {
    if (!told.has(job)) told.set(job, rules.jobViews((await jobStory(book, rules, job)).story)?.shares)
    view = rules.lotWithJob(lot, view, job, told.get(job)?.get(lot))
  }
  await book.lotView.put(view)
}
