/**
 * The newest records once more, in local storage, as lines of a backup. Measured: on a disk that ran full a browser throws
 * its database away when it is opened again, whatever space was freed meanwhile; local storage stays. It holds some days'
 * work, so the oldest lines give way to the newest; what is older stands in the last backup.
 */
import type { Source } from '../../domain/ports'
import type { Afterwards } from '../afterwards'
import { browserIds } from '../browser-clock'
import { linesOf } from './lines-of'
import type { WrittenRows } from './lines-of'

export interface SecondCopy {
  /** Adds one command. Never fails: the database alone decides whether something is saved. */
  append(rows: WrittenRows): void
  /** Somebody was forgotten, who may stand in any line about a person: all of those go. */
  forgetPeople(): void
  /** Every line, in the order of their writing; undefined when there is none. */
  read(): Source | undefined
}

const ABOUT_A_PERSON = /^\{"(?:personal|photo)":.*\n/gm
const PHOTO = /^\{"photo":.*\n/gm // too large to keep twice
const LIMIT = 4_000_000 // characters, of the five million a browser gives to all; about four thousand readings
const ROOM = 0.9 // of the limit, left after the oldest were removed

/** @param later a save does not wait for its copy; whoever asks for the copy finds it whole */
export function localSecondCopy(book: string, later: Afterwards, storage: Storage = localStorage): SecondCopy {
  const prefix = `${book}:line:`
  /** By time: a key ends in a UUIDv7. */
  const keys = () =>
    Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? '')
      .filter((key) => key.startsWith(prefix))
      .sort()
  const lengthOf = (key: string) => storage.getItem(key)?.length ?? 0
  let held: number | undefined // characters; other tabs add to it unseen, so it is counted anew when it nears the limit

  function makeRoom(most: number) {
    const all = keys()
    held = all.reduce((sum, key) => sum + lengthOf(key), 0)
    for (const key of all) {
      if (held <= most) return
      held -= lengthOf(key)
      storage.removeItem(key)
    }
  }

  function append(rows: WrittenRows) {
    const lines = linesOf(rows).replaceAll(PHOTO, '')
    // A table of thousands of parts would push everything else out and then not fit; the next backup has it.
    if (lines === '' || lines.length > LIMIT * ROOM) return
    try {
      if (held === undefined || held + lines.length > LIMIT) makeRoom(LIMIT * ROOM - lines.length)
      storage.setItem(prefix + browserIds.id(), lines)
      held = (held ?? 0) + lines.length
    } catch {
      held = undefined // blocked or full: the next one makes room
    }
  }

  return {
    append: (rows) => later.soon(() => append(rows)),
    forgetPeople() {
      later.now()
      for (const key of keys()) {
        const lines = (storage.getItem(key) ?? '').replaceAll(ABOUT_A_PERSON, '')
        if (lines === '') storage.removeItem(key)
        else storage.setItem(key, lines)
      }
      held = undefined
    },
    read() {
      later.now()
      const lines = keys().map((key) => storage.getItem(key) ?? '')
      return lines.length === 0 ? undefined : new Blob(lines).stream()
    },
  }
}
