/**
 * A sheet: the plan with everything it stands on copied in, so that the work can be repeated from it alone. A draft is
 * the same shape before it is frozen; a frozen sheet is a fact and never changes.
 */
import * as z from 'zod/mini'
import { bow } from '../call/bow'
import { step } from '../bench/route'
import { amount, day, hash, id, line } from '../records/scalars'
import { rules } from '../shop/rules'
import { lot } from '../stock/lot'
import { part } from '../stock/part'
import { plan } from './plan'

/**
 * What was weighed of a lot, or of a kind of joint, when the sheet was made: the newest weighings, so many pieces each.
 * A shaft's weighings are of the raw shaft.
 */
export const learned = z.strictObject({
  subject: id,
  what: z.enum(['weight', 'vanes joint', 'post joint', 'collar joint']),
  weighings: z.array(z.strictObject({ gr: z.number(), pieces: z.int().check(z.positive()) })).check(z.maxLength(200)),
})
export type Learned = z.infer<typeof learned>

export const sheet = z.strictObject({
  job: id,
  jobCode: line,
  version: z.int().check(z.positive()),
  client: z.nullable(hash),
  hunt: z.strictObject({
    quarry: z.optional(line),
    place: z.optional(line),
    travelOn: z.optional(day),
    shotDistanceYd: z.optional(amount),
  }),
  bow,
  plan,
  parts: z.array(z.strictObject({ id, part })).check(z.maxLength(60)),
  lots: z.array(z.strictObject({ id, lot })).check(z.maxLength(60)),
  learned: z.array(learned).check(z.maxLength(200)),
  rules,
  route: z.array(step).check(z.maxLength(40)),
  /** Version of the equations the figures were made with. */
  formulas: z.literal('core/1'),
  /** The as-built record this sheet rebuilds. */
  rebuildOf: z.optional(hash),
})
export type Sheet = z.infer<typeof sheet>
