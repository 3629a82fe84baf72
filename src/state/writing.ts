import type { Personal } from '../domain/records/personal'
import type { Photo } from '../domain/records/photo'
import type { AnyFact } from '../domain/records/read-fact'
import type { EventDraft } from '../domain/records/write'

/** What one action of the builder writes. `said` is stamped on every record of it. */
export interface Writing {
  readonly events?: readonly EventDraft[]
  readonly facts?: readonly AnyFact[]
  readonly personal?: readonly Personal[]
  readonly photos?: readonly Photo[]
}
