/**
 * What is known of a person, and any note that could name one. It lies apart from the facts, which hold only its hash; a
 * salt keeps the hash from being guessed. Deleting it leaves every other hash as it was.
 */
import * as z from 'zod/mini'
import { hashed } from './hash-of'
import { hash, text } from './scalars'

export const personal = z.strictObject({
  hash,
  /** Sixteen random bytes or more, in hexadecimal. */
  salt: z.string().check(z.regex(/^[0-9a-f]{32,128}$/)),
  fields: z.record(z.string().check(z.regex(/^[a-z][A-Za-z]{0,39}$/)), text),
})
export type Personal = Readonly<z.infer<typeof personal>>

export const personalOf = (salt: string, fields: Readonly<Record<string, string>>): Personal =>
  hashed({ salt, fields: { ...fields } })
