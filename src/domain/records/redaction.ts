/**
 * A redaction: from here on nobody may read these. It is a fact like any other and travels with the book, so it also beats
 * the copies that an older backup brings. Its reason stands on the fact, and names nobody.
 */
import * as z from 'zod/mini'
import { hash } from './scalars'
import type { Hash } from './scalars'

/** Personal data, notes and photos, by hash. */
export const redaction = z.strictObject({ forget: z.array(hash).check(z.minLength(1), z.maxLength(10_000)) })

/** What a fact forgets: nothing, unless it is a redaction. Read leniently, so that a later version's still forgets. */
export function forgottenBy(fact: { readonly kind: string; readonly body: object }): readonly Hash[] {
  if (fact.kind !== 'redaction' || !('forget' in fact.body) || !Array.isArray(fact.body.forget)) return []
  return fact.body.forget.filter((each) => typeof each === 'string')
}
