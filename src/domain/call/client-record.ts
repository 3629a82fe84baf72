/**
 * A client's record as it is written: the fields salted and apart, a fact that names them, and, for a new client, the job
 * that is for them. Two clients of one name are two subjects.
 */
import type { Ids } from '../ports'
import type { Personal } from '../records/personal'
import { personalOf } from '../records/personal'
import type { AnyFact } from '../records/read-fact'
import type { Hash, Id } from '../records/scalars'
import type { EventDraft, Said } from '../records/write'
import { newEvent, newFact } from '../records/write'
import type { ClientFields } from './client'

export interface ClientNow {
  readonly subject: Id | null
  /** The versions that this one follows. */
  readonly parents: readonly Hash[]
  readonly fields: Partial<ClientFields>
  readonly consent: boolean | null
}

export const NO_CLIENT: ClientNow = { subject: null, parents: [], fields: {}, consent: null }

export interface ClientWriting {
  readonly events: readonly EventDraft[]
  readonly facts: readonly AnyFact[]
  readonly personal: readonly Personal[]
}

/** The client with what was changed. Emptied fields are left out; a client without a name still has one, an empty one. */
export function clientWriting(
  job: Id,
  now: ClientNow,
  change: { readonly fields?: Partial<ClientFields>; readonly consent?: boolean },
  said: Said,
  ids: Ids,
): ClientWriting {
  const merged = { name: '', ...now.fields, ...change.fields }
  const fields = Object.fromEntries(
    Object.entries(merged).filter(([key, value]) => key === 'name' || (value !== undefined && value.trim() !== '')),
  )
  const personal = personalOf(ids.salt(), fields)
  const subject = now.subject ?? ids.id()
  const fact = newFact(
    said,
    'client',
    subject,
    { personal: personal.hash, consent: change.consent ?? now.consent },
    { parents: now.parents },
  )
  const events = now.subject === null ? [newEvent('clientSet', { job }, { client: subject })] : []
  return { events, facts: [fact], personal: [personal] }
}
