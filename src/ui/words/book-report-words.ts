/** The plain report of a whole-book check: what was looked at, what is wrong, and what can be done about it. */
import type { BookProblem, BookReport } from '../../domain/records/book-report'
import { counted, showNumber } from './format'

const LOG_LETTERS = 8 // of a log's id, and of a record's hash; enough to tell them apart
const short = (id: string) => id.slice(0, LOG_LETTERS)

export function checkedWords({ facts, events, personal, logs, tooNew }: BookReport): string {
  const read = `${counted(facts, 'record')}, ${counted(events, 'event')} in ${counted(logs.length, 'log')} and ${counted(personal, 'personal entry', 'personal entries')} checked: each against its hash, each event against the one before it, each record against those it follows.`
  return tooNew === 0
    ? read
    : `${read} ${counted(tooNew, 'of them was', 'of them were')} written by a later app and kept as they are.`
}

export function foundWords({ problems }: BookReport): string {
  if (problems.length === 0) return 'Every one is whole.'
  const most = problems.length >= LISTED ? 'At least ' : ''
  return `${most}${counted(problems.length, 'problem')} found. Nothing was changed. Back up what there is now, then add the last good backup: it brings back what is missing or damaged.`
}
const LISTED = 1000 // as many as a check lists

export function bookProblemWords(problem: BookProblem): string {
  switch (problem.problem) {
    case 'changed':
      return `Log ${short(problem.log)}, event ${showNumber(problem.seq, 0)}: it does not fit its hash. It was changed after it was written.`
    case 'gap':
      return problem.from === problem.to
        ? `Log ${short(problem.log)}: event ${showNumber(problem.from, 0)} is missing.`
        : `Log ${short(problem.log)}: events ${showNumber(problem.from, 0)} to ${showNumber(problem.to, 0)} are missing.`
    case 'fork':
      return `Log ${short(problem.log)}, event ${showNumber(problem.seq, 0)}: two events stand in one place. One log was written in two books.`
    case 'unchained':
      return `Log ${short(problem.log)}, event ${showNumber(problem.seq, 0)}: it does not follow the event before it. One of them was exchanged.`
    case 'unreadable':
      return `${TABLES[problem.table] ?? problem.table} ${short(problem.key)} cannot be read: ${problem.detail}. It is kept, and goes into every backup as it is.`
    case 'changed record':
      return `${TABLES[problem.table] ?? problem.table} ${short(problem.key)} does not fit its hash. It was changed after it was written.`
    case 'named missing':
      return `Record ${short(problem.record)} names a name, a note or a picture, ${short(problem.named)}, which is not in this book; nobody asked for it to be forgotten.`
    case 'parent missing':
      return `Record ${short(problem.fact)} follows record ${short(problem.parent)}, which is not in this book.`
  }
}
const TABLES: Readonly<Record<string, string>> = {
  facts: 'Record',
  events: 'Event',
  personal: 'Personal entry',
}
