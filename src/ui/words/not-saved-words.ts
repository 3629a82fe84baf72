/** Why something is not on the disk, and what to do about it. */
import { counted } from './format'
import type { NotSavedReason } from '../../domain/ports'

export function notSavedWords(why: NotSavedReason): string {
  switch (why) {
    case 'timeout':
      return 'the disk did not answer in time. Save again finds out whether it arrived.'
    case 'stopped':
      return 'a write failed and the book waits to be recovered.'
    case 'newer-app':
      return 'the book was written by a later version of the app. Reload.'
    case 'closed':
      return 'another tab has changed the book. Reload.'
  }
}

/** How many entries are meant; of one it is plain. */
export const notSavedCount = (entries: number): string =>
  entries === 1 ? 'Not saved' : `${counted(entries, 'entry', 'entries')} not saved`
