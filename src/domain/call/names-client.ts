/** All that names a client: every version of the record, and the notes and photos of the client's jobs. */
import type { AnyEvent } from '../records/read-event'
import type { FactOf } from '../records/read-fact'
import type { Hash } from '../records/scalars'

export interface NamesClient {
  readonly versions: readonly Hash[]
  readonly notes: readonly Hash[]
  readonly photos: readonly Hash[]
}

/** @param jobs the events of the jobs that are for this client */
export function namesClient(
  versions: readonly FactOf<'client'>[],
  jobs: readonly (readonly AnyEvent[])[],
): NamesClient {
  const events = jobs.flat()
  return {
    versions: unique(versions.map((fact) => fact.body.personal)),
    notes: unique(events.flatMap(noteOf)),
    photos: unique(events.flatMap((event) => (event.what === 'photographed' ? [event.body.photo] : []))),
  }
}

function noteOf(event: AnyEvent): readonly Hash[] {
  if (event.what === 'noted') return [event.body.note]
  if (event.what !== 'answered' || !('value' in event.body.answer)) return []
  const { value } = event.body.answer
  return typeof value === 'object' && 'note' in value ? [value.note] : []
}

const unique = (hashes: readonly Hash[]): readonly Hash[] => [...new Set(hashes)]
