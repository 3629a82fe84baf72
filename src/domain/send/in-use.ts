/** What became of the arrows after they were sent: which are shot still, which are retired, and why. */
import type { BenchArrow } from '../bench/bench'
import { building } from '../bench/bench'
import type { EventBody } from '../job/events'
import type { Job } from '../job/job'
import type { Id } from '../records/scalars'

export type Retirement = EventBody<'retired'> & { readonly at: string; readonly by: string }

/** The retired arrows; once retired, always retired. */
export const retirements = (job: Job): ReadonlyMap<Id, Retirement> =>
  new Map(
    job.afterwards.flatMap(({ what, arrow, at, by, body }) =>
      what === 'retired' && arrow !== null ? [[arrow, { ...(body as EventBody<'retired'>), at, by }] as const] : [],
    ),
  )

/** The arrows that left and are not retired, by number. */
export function inUse(job: Job): readonly BenchArrow[] {
  const retired = retirements(job)
  return job.bench === null ? [] : building(job.bench).filter(({ id }) => !retired.has(id))
}

/** The newest weight that the client reported of each arrow, gr. */
export const survivorWeights = (job: Job): ReadonlyMap<Id, number> =>
  new Map(
    job.afterwards.flatMap(({ what, arrow, body }) =>
      what === 'reported' && arrow !== null && 'point' in body && body.point === 'survivorWeightGr'
        ? [[arrow, body.value] as const]
        : [],
    ),
  )
