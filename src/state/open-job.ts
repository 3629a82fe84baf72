/** A job as the pages of its stages need it: its fold, the frozen sheets and as-builts it names, its client and notes. */
import type { AsBuilt } from '../domain/bench/built'
import { VIEW_RULES } from '../domain/job/view-rules'
import type { Job } from '../domain/job/job'
import { jobAfter, jobOf } from '../domain/job/job'
import type { Event } from '../domain/records/event'
import { endAfter, orderEnd } from '../domain/records/event-order'
import type { OrderEnd } from '../domain/records/event-order'
import type { AnyEvent } from '../domain/records/read-event'
import type { AnyFact } from '../domain/records/read-fact'
import { readable } from '../domain/records/read-fact'
import type { Unread } from '../domain/records/read-fact'
import type { Hash } from '../domain/records/scalars'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppRepository } from './app-repository'

export interface OpenJob {
  readonly job: Job
  readonly events: readonly AnyEvent[]
  readonly end: OrderEnd
  readonly unread: readonly Unread[]
  readonly sheets: ReadonlyMap<Hash, Sheet>
  readonly asBuilts: ReadonlyMap<Hash, AsBuilt>
  readonly clientFact: Hash | null
  readonly client: Readonly<Record<string, string>> | null
  /** Notes by hash; a forgotten one is missing. */
  readonly notes: ReadonlyMap<Hash, string>
}

const bodies = <K extends AnyFact['kind']>(facts: readonly AnyFact[], kind: K) =>
  new Map(
    facts.flatMap((fact) => (fact.kind === kind ? [[fact.hash, fact.body]] : [])) as [
      Hash,
      Extract<AnyFact, { kind: K }>['body'],
    ][],
  )

/**
 * The open job with what was just written to it, so that a reading does not wait for the whole story to be read again. In
 * full where the events do not come last, or bring a version or another client.
 */
export async function openJobWith(
  repository: AppRepository,
  open: OpenJob,
  written: readonly Event[],
): Promise<OpenJob | null> {
  // Of today's schema and checked before it was written.
  const added = written.filter((event) => event.job === open.job.id) as unknown as readonly AnyEvent[]
  const end = added.reduce<OrderEnd | undefined>((before, event) => before && endAfter(before, event), open.end)
  const job = added.reduce<Job | null>(jobAfter, open.job)
  if (job === null || end === undefined || standsElsewhere(job, open.job)) return openJob(repository, open.job.id)
  const notes = await notesOf(repository, added)
  return {
    ...open,
    job,
    events: [...open.events, ...added],
    end,
    notes: notes.length === 0 ? open.notes : new Map([...open.notes, ...notes]),
  }
}

const standsElsewhere = (now: Job, before: Job): boolean =>
  now.client !== before.client || now.frozen !== before.frozen || now.signedOff !== before.signedOff

async function notesOf(repository: AppRepository, events: readonly AnyEvent[]): Promise<readonly [Hash, string][]> {
  const named = events.flatMap((event) => VIEW_RULES.personalOf(event))
  const rows = await Promise.all(named.map(async (hash) => [hash, await repository.personal(hash)] as const))
  return rows.flatMap(([hash, row]): [Hash, string][] => (row === undefined ? [] : [[hash, row.fields['text'] ?? '']]))
}

/** A job from what is stored, or null when there is no such job. */
export async function openJob(repository: AppRepository, id: string): Promise<OpenJob | null> {
  const { events, unread } = await repository.eventsOfJob(id)
  const job = jobOf(events)
  if (job === null) return null
  const hashes = [...job.frozen.map((each) => each.sheet), ...job.signedOff.map((each) => each.asBuilt)]
  if (job.of !== null) hashes.push(job.of.asBuilt)
  const facts = readable((await repository.facts(hashes)).flatMap((fact) => (fact === undefined ? [] : [fact])))
  const [client] = job.client === null ? [] : readable(await repository.headsOf('client', job.client))
  const personal = client === undefined ? undefined : await repository.personal(client.body.personal)
  return {
    job,
    events,
    end: orderEnd(events),
    unread,
    sheets: bodies(facts, 'sheet'),
    asBuilts: bodies(facts, 'asBuilt'),
    clientFact: client?.hash ?? null,
    client: personal?.fields ?? null,
    notes: new Map(await notesOf(repository, events)),
  }
}
