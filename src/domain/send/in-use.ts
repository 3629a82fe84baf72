/** What became of the arrows after they were sent: which are shot still, which are retired, and why. */
import type { BenchArrow } from '../bench/bench'
import { accepted, building } from '../bench/bench'
import type { EventBody } from '../job/events'
import type { Job } from '../job/job'
import { canonical } from '../records/canonical'
import type { Id } from '../records/scalars'
import { repairsOf } from './repairs'

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

/** The newest weight of each arrow since it left: as the client reported it, or as it was weighed after a repair, gr. */
export const survivorWeights = (job: Job): ReadonlyMap<Id, number> =>
  new Map(
    job.afterwards.flatMap(({ what, arrow, body }) => {
      if (arrow === null) return []
      if (what === 'reported' && 'point' in body && body.point === 'survivorWeightGr') return [[arrow, body.value]]
      return 'finished' in body && body.finished !== undefined ? [[arrow, body.finished.value] as const] : []
    }),
  )

/** What an arrow weighed when it left, gr: a repair since then has put another weight into its record. */
export function builtWeight(job: Job, arrow: BenchArrow): number | undefined {
  const repair = repairsOf(job).find((each) => each.arrow === arrow.id && each.ended?.how === 'closed')
  const anew = arrow.readings.find(({ reading }) => canonical(reading) === canonical(repair?.ended?.finished ?? null))
  const was =
    anew === undefined
      ? accepted(arrow, 'finishedWeight')
      : arrow.readings.find(({ withdrawn }) => withdrawn?.event === anew.event)
  return was?.reading.value
}
