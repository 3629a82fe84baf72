/** Reading a stored fact: unknown in, a named result out. Nothing stored can make the app fall over. */
import * as z from 'zod/mini'
import { fitsHash } from './chain'
import { factEnvelope } from './fact'
import type { Fact } from './fact'
import { FACT_KINDS } from './kinds'
import type { FactBody, FactKind } from './kinds'
import { MIGRATIONS, migrated } from './migrations'
import type { Migrations } from './migrations'

export type FactOf<K extends FactKind> = Fact<K, FactBody<K>>
export type AnyFact = { [K in FactKind]: FactOf<K> }[FactKind]

/** `raw` is kept, so that what cannot be read can still be exported. */
export type Unread =
  | { readonly kind: 'too-new'; readonly schemaVersion: number; readonly raw: unknown } // another tab or device runs a later app
  | { readonly kind: 'unreadable'; readonly problem: string; readonly raw: unknown }
export type ReadFact<F = AnyFact> = { readonly kind: 'ok'; readonly fact: F } | Unread

interface KindRules {
  readonly schemaVersion: number
  readonly body: z.ZodMiniType
}

/**
 * A fact as it was stored, checked against its hash and brought to today's version. A kind this app does not know is too
 * new, not wrong.
 */
export function readFact(
  raw: unknown,
  kinds: Readonly<Record<string, KindRules>> = FACT_KINDS,
  migrations: Migrations = MIGRATIONS,
): ReadFact {
  const envelope = factEnvelope.safeParse(raw)
  if (!envelope.success) return { kind: 'unreadable', problem: z.prettifyError(envelope.error), raw }
  const { kind, schemaVersion, hash, body } = envelope.data
  if (!fitsHash(envelope.data)) return { kind: 'unreadable', problem: `does not fit its hash ${hash}`, raw }
  const rules = Object.hasOwn(kinds, kind) ? kinds[kind] : undefined
  if (!rules || schemaVersion > rules.schemaVersion) return { kind: 'too-new', schemaVersion, raw }
  const read = rules.body.safeParse(migrated(migrations[kind], body, schemaVersion, rules.schemaVersion))
  if (!read.success) return { kind: 'unreadable', problem: z.prettifyError(read.error), raw }
  return { kind: 'ok', fact: { ...envelope.data, body: read.data } as AnyFact }
}

/** The facts among the results, for those who can only work with what reads. */
export const readable = <F>(results: readonly ReadFact<F>[]): readonly F[] =>
  results.flatMap((result) => (result.kind === 'ok' ? [result.fact] : []))
