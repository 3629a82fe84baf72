/** The small schemas that every record is made of. Numbers are finite; texts are bounded; a hash is SHA-256 in hex. */
import * as z from 'zod/mini'

export const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/))
export const id = z.uuidv7()
/** A moment, UTC, as an ISO 8601 text. */
export const moment = z.iso.datetime()
/** A calendar day without a time zone. */
export const day = z.iso.date()
export const line = z.string().check(z.maxLength(200))
export const text = z.string().check(z.maxLength(20_000))
export const amount = z.number().check(z.nonnegative())
export const positive = z.number().check(z.positive())
export const count = z.int().check(z.nonnegative())

export type Hash = z.infer<typeof hash>
export type Id = z.infer<typeof id>
