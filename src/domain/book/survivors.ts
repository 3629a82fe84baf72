/** What is left of a past set: which arrows are shot still, what they weigh now, and which are retired. */
import { building } from '../bench/bench'
import type { Job } from '../job/job'
import { builtWeight, retirements, survivorWeights } from '../send/in-use'
import type { Retirement } from '../send/in-use'
import type { Repair } from '../send/repairs'
import { repairsOf } from '../send/repairs'

export interface PastArrow {
  readonly no: number
  readonly code: string
  readonly builtGr: number | undefined
  /** As it was last weighed, by the client or after a repair. */
  readonly nowGr: number | undefined
  /** Repairs that were begun and not given up. */
  readonly repairs: readonly Repair[]
  readonly retired: Retirement | undefined
}
export interface Survivors {
  readonly arrows: readonly PastArrow[]
  /** How many are shot still, and how many are retired. */
  readonly inUse: number
  readonly gone: number
  /** How many of the survivors were weighed again. */
  readonly weighed: number
  /** Mean of the survivors that were weighed again, to a tenth; undefined when none was. */
  readonly meanNowGr: number | undefined
}

/** @returns undefined for a job that was never built */
export function survivors(job: Job): Survivors | undefined {
  if (job.bench === null) return undefined
  const retired = retirements(job)
  const weights = survivorWeights(job)
  const arrows = building(job.bench).map(
    (arrow): PastArrow => ({
      no: arrow.no,
      code: arrow.code,
      builtGr: builtWeight(job, arrow),
      nowGr: weights.get(arrow.id),
      repairs: repairsOf(job).filter((each) => each.arrow === arrow.id && each.ended?.how !== 'left'),
      retired: retired.get(arrow.id),
    }),
  )
  const left = arrows.filter((arrow) => arrow.retired === undefined)
  const weighed = left.flatMap(({ nowGr }) => nowGr ?? [])
  const total = weighed.reduce((sum, gr) => sum + gr, 0)
  return {
    arrows,
    inUse: left.length,
    gone: arrows.length - left.length,
    weighed: weighed.length,
    meanNowGr: weighed.length === 0 ? undefined : Math.round((total / weighed.length) * 10) / 10,
  }
}
