/** What the archive of a whole book says of itself. */
import { counted } from './format'

export const archiveIntroWords = (jobs: number, builds: number, day: string): string =>
  `Made ${day}: ${counted(jobs, 'job')}, ${counted(builds, 'build')}. This page needs no app, no network and no script. What stands in it was read off the records below.`

export const ARCHIVE_WORDS = {
  jobs: 'The jobs, newest first',
  records: 'The records',
  recordsNote:
    'Every record of the book, one a line, as in a backup. Saved as a text file of its own, without anything before or after, it is a backup: it can be added to a book, and checked.',
  personal: 'Names and notes of clients are in it, as far as they were not forgotten. Keep it as you would a key.',
  none: 'Nothing was frozen yet.',
} as const
