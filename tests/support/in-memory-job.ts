import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import type { JobEvent } from '@/domain/job/events'
import { chained, NO_EVENT } from '@/domain/records/event'
import type { LogHead } from '@/domain/records/event'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import { testId } from './test-id'

/** A job whose events are chained and folded without a book: what the gateway does, without a disk. */
export function inMemoryJob(first: readonly EventDraft[]) {
  let head: LogHead = { log: testId(1), seq: 0, hash: NO_EVENT }
  let job: Job | null = null
  let command = 0
  const perform = (events: readonly EventDraft[]): Promise<Job> => {
    command += 1
    const at = new Date(Date.UTC(2026, 0, 1) + command * 60_000).toISOString()
    const made = chained(head, { id: testId(10_000 + command), by: 'Ilse', at, events })
    for (const event of made) {
      head = { log: event.log, seq: event.seq, hash: event.hash }
      job = jobAfter(job, event as JobEvent)
    }
    return Promise.resolve(job!)
  }
  let ids = 30_000
  const id = () => testId((ids += 1))
  return { perform, id, begun: perform(first) }
}

export const opened = (job: string) => newEvent('opened', { job }, { kind: 'order', of: null })
