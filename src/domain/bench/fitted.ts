/**
 * Which part, lot and numbered piece one arrow takes for a line of the plan, or beside the plan: pairing and mending. What
 * the sheet does not hold is copied in, so that the record can be read without the shelf.
 */
import * as z from 'zod/mini'
import { id, line, positive } from '../records/scalars'
import { learned } from '../sheet/sheet'
import { lot } from '../stock/lot'
import { part } from '../stock/part'

export const fitted = z.strictObject({
  /** The plan's line, or a line of the arrow's own. */
  line: id,
  part: id,
  lot: z.nullable(id),
  no: z.optional(line),
  /** Pieces of it, on a line of the arrow's own. */
  count: z.optional(z.int().check(z.positive(), z.maximum(12))),
  /** Where this one arrow is cut to another length than its sheet says: the arrows of a test kit. */
  c2cIn: z.optional(positive),
  copy: z.optional(z.strictObject({ part, lot: z.nullable(lot), learned: z.array(learned).check(z.maxLength(4)) })),
})
export type Fitted = z.infer<typeof fitted>
