/** The plan of one arrow as it is edited: which parts, how many, where, and what it must land on. */
import * as z from 'zod/mini'
import { amount, count, id, line, positive } from '../records/scalars'

/** One line of the sheet: a part, from a lot, so many of it. `lot: null` is lot unknown. */
export const planLine = z.strictObject({
  id,
  part: id,
  lot: z.nullable(id),
  count: z.int().check(z.positive(), z.maximum(12)),
  /** The numbered piece chosen (a head), where the lot numbers them. */
  no: z.optional(line),
})
export type PlanLine = z.infer<typeof planLine>

export const planFields = {
  targetGr: positive,
  quantity: z.int().check(z.minimum(1), z.maximum(12)),
  spares: count,
  c2cIn: positive,
  /** Vane tail to throat. */
  vaneTailIn: amount,
  fletchSide: z.enum(['right', 'left', 'straight']),
  fletchDegrees: z.number().check(z.minimum(0), z.maximum(15)),
  cockVaneDeg: z.number().check(z.minimum(0), z.maximum(360)),
  indexPlane: z.enum(['none', 'spine mark', 'cock vane']),
  jig: line,
  frontPoint: z.enum(['shaft front', 'outsert shoulder']),
} as const
export const plan = z.strictObject({
  targetGr: z.optional(planFields.targetGr),
  quantity: planFields.quantity,
  spares: planFields.spares,
  c2cIn: z.optional(planFields.c2cIn),
  vaneTailIn: planFields.vaneTailIn,
  fletchSide: planFields.fletchSide,
  fletchDegrees: planFields.fletchDegrees,
  cockVaneDeg: planFields.cockVaneDeg,
  indexPlane: planFields.indexPlane,
  jig: planFields.jig,
  frontPoint: planFields.frontPoint,
  /** Whether the builder has put the lines in an order of his own; without it they are shown by position. */
  order: z.optional(z.literal('by hand')),
  lines: z.array(planLine).check(z.maxLength(40)),
})
export type Plan = z.infer<typeof plan>
export type PlanField = keyof typeof planFields

export const NEW_PLAN: Plan = {
  quantity: 6,
  spares: 0,
  vaneTailIn: 1,
  fletchSide: 'right',
  fletchDegrees: 2,
  cockVaneDeg: 0,
  indexPlane: 'spine mark',
  jig: '',
  frontPoint: 'shaft front',
  lines: [],
}
