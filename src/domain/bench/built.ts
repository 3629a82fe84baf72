/** What was built: one record an arrow with every reading, and the as-built that closes the set. */
import * as z from 'zod/mini'
import { amount, count, hash, id, line, moment } from '../records/scalars'
import { DATA_POINT_NAMES } from './data-points'
import { fitted } from './fitted'
import { reading } from './reading'

export const DISPOSITIONS = ['use as is', 'rework', 'scrap'] as const

export const deviation = z.strictObject({
  id,
  step: line,
  point: z.nullable(z.enum(DATA_POINT_NAMES)),
  required: line,
  found: line,
  why: line,
  decision: z.nullable(
    z.strictObject({ disposition: z.enum(DISPOSITIONS), reason: line, decidedBy: line, decidedAt: moment }),
  ),
})
export type Deviation = z.infer<typeof deviation>

/** A reading as the record keeps it: who took it, and what became of it. */
export const keptReading = z.strictObject({
  event: hash,
  by: line,
  step: line,
  reading,
  /** The event that withdrew or replaced it, with the reason; a corrected reading is kept for good. */
  withdrawn: z.nullable(z.strictObject({ event: hash, by: line, at: moment, reason: line })),
})
export type KeptReading = z.infer<typeof keptReading>

/** How long a glue had, or anything else that is timed. */
export const timed = { what: line, startedAt: moment, dueAt: moment, temperatureC: z.nullable(z.number()) }

/** An arrow that came back: for which line of the plan, why, and what it weighed before anything was done to it. */
export const cameBack = { repair: id, line: id, what: line, reason: line, before: reading }

/** A repair as it was done: both weights, how long its glue had. Its steps stand among the confirmed ones. */
export const repairBuilt = z.strictObject({
  ...cameBack,
  begunBy: line,
  begunAt: moment,
  cures: z.array(z.strictObject({ ...timed, endedAt: z.nullable(moment) })).check(z.maxLength(20)),
  /** The weight after it; null where it was given up. */
  finished: z.nullable(reading),
  endedBy: line,
  endedAt: moment,
})
export type RepairBuilt = z.infer<typeof repairBuilt>

export const arrowBuilt = z.strictObject({
  arrow: id,
  code: line,
  no: z.int().check(z.positive()),
  sheet: hash,
  outcome: z.enum(['accepted', 'scrapped']),
  /** For a scrapped arrow. */
  cause: z.optional(line),
  replaces: z.optional(id),
  /** Which part and lot each line of the plan really took, and what was fitted beside the plan. */
  fitted: z.array(fitted).check(z.maxLength(60)),
  readings: z.array(keptReading).check(z.maxLength(400)),
  confirmed: z.array(z.strictObject({ step: line, by: line, at: moment })),
  deviations: z.array(deviation).check(z.maxLength(60)),
  /** Since it left; none while it never came back. */
  repairs: z.optional(z.array(repairBuilt).check(z.maxLength(60))),
})
export type ArrowBuilt = z.infer<typeof arrowBuilt>

export const asBuilt = z.strictObject({
  job: id,
  jobCode: line,
  version: z.int().check(z.positive()),
  sheet: hash,
  arrows: z.array(hash).check(z.maxLength(40)),
  counts: z.strictObject({ started: count, accepted: count, scrapped: count, sent: count }),
  builders: z.array(line),
  signedOffBy: line,
  /** Each scale against its check weight while the set was on the bench; what it was off by is in every weight of that day. */
  scaleChecks: z.optional(
    z.array(z.strictObject({ scale: line, checkWeightGr: amount, readGr: amount, at: moment })).check(z.maxLength(200)),
  ),
})
export type AsBuilt = z.infer<typeof asBuilt>
