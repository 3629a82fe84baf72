/** Making facts and events of the kinds there are, at today's version, their bodies checked before they are hashed. */
import type * as z from 'zod/mini'
import type { NewEvent } from './event'
import { factOf } from './fact'
import { EVENT_KINDS, FACT_KINDS } from './kinds'
import type { EventBody, EventKind, FactBody, FactKind } from './kinds'
import { EVENT_SCHEMA } from './read-event'
import type { FactOf } from './read-fact'
import type { Hash, Id } from './scalars'

/** Who says it and when: what every record of one command shares. */
export interface Said {
  readonly by: string
  /** UTC, ISO 8601. */
  readonly at: string
}

/** A fact of a known kind. @throws when the body is not of that kind: a fault of the program, not of a person */
export function newFact<K extends FactKind>(
  said: Said,
  kind: K,
  subject: Id,
  body: FactBody<K>,
  more: { readonly parents?: readonly Hash[]; readonly reason?: string } = {},
): FactOf<K> {
  const schema: z.ZodMiniType = FACT_KINDS[kind].body
  return factOf<K, FactBody<K>>({
    kind,
    schemaVersion: FACT_KINDS[kind].schemaVersion,
    subject,
    parents: more.parents ?? [],
    by: said.by,
    at: said.at,
    ...(more.reason === undefined ? {} : { reason: more.reason }),
    body: schema.parse(body) as FactBody<K>,
  })
}

export type EventDraft<K extends EventKind = EventKind> = NewEvent<K, EventBody<K>>

/** An event of a known kind, to be chained by the gateway. @throws as `newFact` does */
export function newEvent<K extends EventKind>(
  what: K,
  about: { readonly job: Id | null; readonly arrow?: Id },
  body: EventBody<K>,
): EventDraft<K> {
  const schema: z.ZodMiniType = EVENT_KINDS[what]
  return {
    job: about.job,
    ...(about.arrow === undefined ? {} : { arrow: about.arrow }),
    what,
    schemaVersion: EVENT_SCHEMA,
    body: schema.parse(body) as EventBody<K>,
  }
}
