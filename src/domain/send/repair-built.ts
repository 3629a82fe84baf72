/** The repairs of an arrow as its record keeps them, each once it has ended. */
import type { ArrowBuilt, RepairBuilt } from '../bench/built'
import { curesOf } from '../bench/cure-state'
import type { Job } from '../job/job'
import type { Id } from '../records/scalars'
import { repairsOf } from './repairs'

export function repairsBuilt(job: Job, arrow: Id): Pick<ArrowBuilt, 'repairs'> {
  const cures = job.bench === null ? [] : curesOf(job.bench, arrow)
  const repairs = repairsOf(job).flatMap((repair): RepairBuilt[] => {
    const { ended } = repair
    if (repair.arrow !== arrow || ended === null) return []
    const own = new Set(repair.timers.map(({ id }) => id))
    return [
      {
        repair: repair.repair,
        line: repair.line,
        what: repair.what,
        reason: repair.reason,
        before: repair.before,
        finished: ended.finished,
        begunBy: repair.begunBy,
        begunAt: repair.begunAt,
        cures: cures
          .filter(({ id }) => own.has(id))
          .map(({ what, startedAt, dueAt, endedAt, temperatureC }) => ({
            what,
            startedAt,
            dueAt,
            endedAt,
            temperatureC,
          })),
        endedBy: ended.by,
        endedAt: ended.at,
      },
    ]
  })
  return repairs.length === 0 ? {} : { repairs }
}
