/** Parts received together. What they really weigh is learned from readings; the lot itself holds only what was received. */
import * as z from 'zod/mini'
import { amount, count, day, id, line } from '../records/scalars'

export const lot = z.strictObject({
  part: id,
  code: line,
  receivedOn: day,
  received: count,
  openedOn: z.optional(day),
  expiresOn: z.optional(day),
  /** A lot on hold is offered nowhere and warned of at the bench. */
  hold: z.optional(line),
  /** Singly numbered pieces (heads), each with its own weight. */
  numbered: z.array(z.strictObject({ no: line, weightGr: amount })).check(z.maxLength(500)),
})
export type Lot = z.infer<typeof lot>
