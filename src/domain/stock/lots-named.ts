/** The lots that a job speaks of, used up since or not: in its plan, its frozen sheets, on its arrows and in its kits. */
import type { Job } from '../job/job'
import type { Id } from '../records/scalars'
import type { Sheet } from '../sheet/sheet'

export function lotsNamed(job: Job, sheets: Iterable<Sheet>): readonly Id[] {
  const kits = [...job.kits, ...job.kitsBegun]
  const named = [
    ...job.plan.lines,
    ...[...sheets].flatMap(({ plan }) => plan.lines),
    ...(job.bench?.arrows ?? []).flatMap(({ fitted }) => fitted),
    ...kits.flatMap(({ arrows }) => arrows),
  ]
  return [...new Set(named.flatMap(({ lot }) => lot ?? []))]
}
