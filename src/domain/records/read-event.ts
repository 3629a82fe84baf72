/** Reading a stored event: as `readFact` does, with one version for all kinds. */
import * as z from 'zod/mini'
import { eventEnvelope } from './event'
import type { Event } from './event'
import { EVENT_KINDS } from './kinds'
import type { EventBody, EventKind } from './kinds'
import { EVENT_MIGRATIONS, migrated } from './migrations'
import type { Migrations } from './migrations'
import type { Unread } from './read-fact'

/** The version of all event bodies together; raised when any of them changes. */
export const EVENT_SCHEMA = 1

export type EventOf<K extends EventKind> = Event<K, EventBody<K>>
export type AnyEvent = { [K in EventKind]: EventOf<K> }[EventKind]
export type ReadEvent = { readonly kind: 'ok'; readonly event: AnyEvent } | Unread

/** An event as it was stored, brought to today's version. Its hash is checked with its chain, by `chainProblems`. */
export function readEvent(
  raw: unknown,
  kinds: Readonly<Record<string, z.ZodMiniType>> = EVENT_KINDS,
  migrations: Migrations = EVENT_MIGRATIONS,
  today = EVENT_SCHEMA,
): ReadEvent {
  const envelope = eventEnvelope.safeParse(raw)
  if (!envelope.success) return { kind: 'unreadable', problem: z.prettifyError(envelope.error), raw }
  const { what, schemaVersion, body } = envelope.data
  const schema = Object.hasOwn(kinds, what) ? kinds[what] : undefined
  if (!schema || schemaVersion > today) return { kind: 'too-new', schemaVersion, raw }
  const read = schema.safeParse(migrated(migrations[what], body, schemaVersion, today))
  if (!read.success) return { kind: 'unreadable', problem: z.prettifyError(read.error), raw }
  return { kind: 'ok', event: { ...envelope.data, body: read.data } as AnyEvent }
}
