/**
 * A client as a record refers to one. Everything personal lies apart, salted, referenced by hash, so that it can be
 * forgotten while every other hash still verifies.
 */
import * as z from 'zod/mini'
import { hash, line, text } from '../records/scalars'

/** `consent` to keep it for the next order; null: not asked yet. */
export const client = z.strictObject({ personal: hash, consent: z.nullable(z.boolean()) })

export const clientFields = z.strictObject({
  name: line,
  phone: z.optional(line),
  email: z.optional(line),
  address: z.optional(text),
  notes: z.optional(text),
})
export type ClientFields = z.infer<typeof clientFields>
