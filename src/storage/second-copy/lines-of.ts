/** Records as lines of a backup. */
import { canonical } from '../../domain/records/canonical'
import type { Personal } from '../../domain/records/personal'
import type { Photo } from '../../domain/records/photo'
import { photoToLine } from '../backup/format'

export interface WrittenRows {
  readonly events: readonly object[]
  readonly facts: readonly object[]
  readonly personal: readonly Personal[]
  readonly photos: readonly Photo[]
}

export const linesOf = ({ events, facts, personal, photos }: WrittenRows): string =>
  [
    ...events.map((event) => canonical({ event })),
    ...facts.map((fact) => canonical({ fact })),
    ...personal.map((row) => canonical({ personal: row })),
    ...photos.map((photo) => canonical({ photo: photoToLine(photo) })),
  ]
    .map((line) => `${line}\n`)
    .join('')
