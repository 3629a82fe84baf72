/** What a backup or the whole book was found to be. */
import type { BackupCheck, StagedBackup } from '../../domain/records/backup'
import type { BackupFile, BackupState, Recovered } from '../../domain/ports'
import { counted } from './format'

export function checkWords(check: BackupCheck): string {
  switch (check.kind) {
    case 'whole':
      return `The backup is whole: ${counted(check.counts.fact, 'record')}, ${counted(check.counts.event, 'event')}.`
    case 'damaged':
      return `The backup is damaged: ${check.problems.slice(0, 3).join('; ')}. ${counted(check.readable.fact, 'record')} and ${counted(check.readable.event, 'event')} can still be read.`
    case 'refused':
      return `The file is refused: ${check.problem}. Nothing of it was used.`
  }
}

export const stagedWords = ({ check, adds, alreadyThere, jobs }: StagedBackup): string =>
  `${checkWords(check)} It would add ${counted(adds.fact, 'record')} and ${counted(adds.event, 'event')} in ${counted(jobs.length, 'job')}; ${counted(alreadyThere.event, 'event')} are there already.`

export function recoveredWords(recovered: Recovered): string {
  switch (recovered.kind) {
    case 'recovered':
      return `Rescued: ${counted(recovered.counts.event, 'event')} and ${counted(recovered.counts.fact, 'record')}, compared to the byte.${recovered.lost.length === 0 ? '' : ` ${counted(recovered.lost.length, 'row')} could not be read and stay out.`}`
    case 'not-recovered':
      return `Not rescued: ${recovered.problem}. Keep the file that was downloaded; free some space and try again before closing this page.`
    case 'lost':
      return `The browser had dropped the book: ${counted(recovered.found.events, 'event')} of ${recovered.remembered.events} came back from this device’s second copy. Add the last backup for the rest.`
  }
}

export function fileSavedWords(end: Awaited<ReturnType<BackupFile['save']>>): string {
  switch (end.kind) {
    case 'saved':
      return `Saved to the file: ${counted(end.exported.counts.fact, 'record')}, ${counted(end.exported.counts.event, 'event')}.`
    case 'no file':
      return 'No file is chosen.'
    case 'not allowed':
      return 'The browser was not given leave to write the file. Save to it once more and allow it.'
    case 'failed':
      return `The file was not written: ${end.problem}. What it held before is still there.`
  }
}

const OLD = 7 // days
const MANY = 500 // changes: about three sets at the bench

/** When a backup is due, and how it is due; undefined while none is. @param now ISO 8601 */
export function reminderWords({ at, lacks }: BackupState, now: string): string | undefined {
  if (lacks === 0) return undefined
  if (at === null)
    return `There is no backup yet, and ${counted(lacks, 'change')} would be lost with this device. Take one now.`
  const days = Math.floor((Date.parse(now) - Date.parse(at)) / 86_400_000)
  if (days < OLD && lacks < MANY) return undefined
  return `The last backup is ${days < 1 ? 'of today' : `${counted(days, 'day')} old`} and lacks ${counted(lacks, 'change')}. Take one now.`
}
