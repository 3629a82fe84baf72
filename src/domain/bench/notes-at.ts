/** Notes and pictures of the bench, newest first; what was kept together stands together. */
import type { Hash } from '../records/scalars'
import type { Bench } from './bench'

export interface BenchNote {
  readonly at: string
  readonly by: string
  readonly step: string
  /** Of the arrow; null for the whole set. */
  readonly no: number | null
  readonly note: Hash | null
  readonly photo: Hash | null
}

export function notesAt({ arrows, notes, photos }: Bench): readonly BenchNote[] {
  const noOf = (arrow: string | null) => arrows.find(({ id }) => id === arrow)?.no ?? null
  const isOfNote = (photo: Bench['photos'][number]) => (note: Bench['notes'][number]) =>
    note.at === photo.at && note.arrow === photo.arrow && note.step === photo.step
  const told = notes.map((note): BenchNote => {
    const photo = photos.find((each) => isOfNote(each)(note))
    return {
      at: note.at,
      by: note.by,
      step: note.step,
      no: noOf(note.arrow),
      note: note.note,
      photo: photo?.photo ?? null,
    }
  })
  const alone = photos
    .filter((photo) => !notes.some(isOfNote(photo)))
    .map(({ at, by, step, arrow, photo }): BenchNote => ({ at, by, step, no: noOf(arrow), note: null, photo }))
  return [...told, ...alone].toSorted((a, b) => (a.at > b.at ? -1 : 1))
}
