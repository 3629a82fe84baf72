/** The sheet as it would be frozen now: the plan with the bow, parts, lots, rules and route it stands on copied in. */
import { bowOf, valueOf } from '../call/answers'
import type { Job } from '../job/job'
import type { Hash } from '../records/scalars'
import type { Shelf } from '../stock/shelf'
import type { Sheet } from './sheet'
import { stoodOn } from './stood-on'

export function draftSheet(job: Job, shelf: Shelf, client: Hash | null): Sheet {
  const { plan, answers } = job
  const text = (question: 'quarry' | 'place' | 'travelOn') => valueOf(answers, question) as string | undefined
  const told = {
    quarry: text('quarry'),
    place: text('place'),
    travelOn: text('travelOn'),
    shotDistanceYd: valueOf(answers, 'shotDistanceYd') as number | undefined,
  }
  return {
    job: job.id,
    jobCode: job.code,
    version: (job.frozen.at(-1)?.version ?? 0) + 1,
    client,
    hunt: Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined)),
    bow: bowOf(answers),
    plan,
    ...stoodOn(plan, shelf),
    rules: shelf.rules,
    route: shelf.rules.route,
    formulas: 'core/1',
    ...(job.of === null ? {} : { rebuildOf: job.of.asBuilt }),
  }
}
