/** A job told in memory first: the stories need to see it as it is to know what comes next, and write it when it is told. */
import type { JobEvent } from '../domain/job/events'
import type { Job } from '../domain/job/job'
import { jobAfter } from '../domain/job/job'
import { chained, NO_EVENT } from '../domain/records/event'
import type { LogHead } from '../domain/records/event'
import type { Id } from '../domain/records/scalars'
import type { EventDraft, Said } from '../domain/records/write'

export interface MemoryJob {
  /** The job as it is now. @throws before the first event */
  job(): Job
  perform(said: Said, events: readonly EventDraft[]): Job
}

/**
 * @param id a new id at each asking, for what the chain needs
 * @param end where the log ends that the story will be written to: a job is numbered after its first place in it
 */
export function memoryJob(id: () => Id, end: Pick<LogHead, 'log' | 'seq'>): MemoryJob {
  let head: LogHead = { ...end, hash: NO_EVENT }
  let job: Job | null = null
  const now = () => {
    if (job === null) throw new Error('the story has no beginning')
    return job
  }
  return {
    job: now,
    perform(said, events) {
      for (const event of chained(head, { id: id(), ...said, events })) {
        head = { log: event.log, seq: event.seq, hash: event.hash }
        job = jobAfter(job, event as JobEvent)
      }
      return now()
    },
  }
}
