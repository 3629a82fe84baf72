/**
 * A job told in memory first: the stories need to see it as it is to know what comes next. It is told in the very commands
 * that the book is then given, so that what one record says of another's hash holds in the book too.
 */
import type { JobEvent } from '../domain/job/events'
import type { Job } from '../domain/job/job'
import { jobAfter } from '../domain/job/job'
import type { Command } from '../domain/ports'
import { chained } from '../domain/records/event'
import type { LogHead } from '../domain/records/event'
import type { Id } from '../domain/records/scalars'
import type { EventDraft, Said } from '../domain/records/write'

export type Told = Command & { readonly events: readonly EventDraft[] }

export interface MemoryJob {
  /** @returns the job as it then is */
  perform(said: Said, records: Omit<Told, 'id' | keyof Said>): Job
  /** What was told, in order. What was said at one moment is one command, as each costs a wait for the disk. */
  commands(): readonly Told[]
}

const MOST_EVENTS = 120 // of one command: a slow disk answers it well within the gateway's time

/**
 * @param id a new id at each asking, for the commands
 * @param end where the log ends that the commands will be written to, with nothing written in between
 */
export function memoryJob(id: () => Id, end: LogHead): MemoryJob {
  let head = end
  let job: Job | null = null
  const commands: Told[] = []

  function commandAt(said: Said): Told {
    const last = commands.at(-1)
    if (last !== undefined && last.at === said.at && last.by === said.by && last.events.length < MOST_EVENTS)
      return last
    const begun: Told = { id: id(), ...said, facts: [], personal: [], events: [] }
    commands.push(begun)
    return begun
  }
  function add(said: Said, { facts = [], personal = [], events }: Omit<Told, 'id' | keyof Said>): Told {
    const { facts: told = [], personal: known = [], ...now } = commandAt(said)
    const more = { ...now, facts: [...told, ...facts], personal: [...known, ...personal] }
    const grown: Told = { ...more, events: [...now.events, ...events] }
    commands[commands.length - 1] = grown
    return grown
  }
  return {
    commands: () => commands,
    perform(said, { events, ...apart }) {
      add(said, { ...apart, events: [] })
      for (const draft of events) {
        const { id: command } = add(said, { events: [draft] })
        const [event] = chained(head, { id: command, ...said, events: [draft] })
        head = { log: event!.log, seq: event!.seq, hash: event!.hash }
        job = jobAfter(job, event as JobEvent)
      }
      if (job === null) throw new Error('the story has no beginning')
      return job
    },
  }
}
