/** A fact: something that was so, said by someone, once. It is never changed; a later version names it as a parent. */
import * as z from 'zod/mini'
import { hashed } from './hash-of'
import { hash, id, line, moment, text } from './scalars'
import type { Hash } from './scalars'

/** What every fact carries. The body is the kind's own; see `readFact`. */
export const factEnvelope = z.strictObject({
  hash,
  kind: z.string().check(z.regex(/^[a-z][A-Za-z]{0,39}$/)),
  schemaVersion: z.int().check(z.positive()),
  /** What it is about: a client, a bow, a part, a lot, a job, an arrow. */
  subject: id,
  /** The versions that this one follows. Two or more: a person joined them. */
  parents: z.array(hash).check(z.maxLength(32)),
  by: line,
  at: moment,
  reason: z.optional(text),
  body: z.record(z.string(), z.unknown()),
})

type Envelope = z.infer<typeof factEnvelope>
export interface Fact<Kind extends string = string, Body = Readonly<Record<string, unknown>>>
  extends Readonly<Omit<Envelope, 'kind' | 'body' | 'parents'>> {
  readonly kind: Kind
  readonly parents: readonly Hash[]
  readonly body: Body
}

/** A fact with its hash. Its parents are a set, so they stand sorted. */
export function factOf<Kind extends string, Body>(told: Omit<Fact<Kind, Body>, 'hash'>): Fact<Kind, Body> {
  return hashed({ ...told, parents: [...new Set(told.parents)].sort() })
}
