/** How old the last backup is and what it lacks: *last backup yesterday, 12 changes since*. */
import type { BackupState } from '../../domain/ports'
import { showDay } from './dates'
import { counted } from './format'

export function backupWords({ at, lacks }: BackupState, today: string): string {
  if (at === null) return lacks === 0 ? 'nothing to back up yet' : `no backup yet, ${counted(lacks, 'change')} to keep`
  const when = at.slice(0, 10) === today ? 'today' : showDay(at.slice(0, 10))
  return lacks === 0 ? `last backup ${when}, complete` : `last backup ${when}, ${counted(lacks, 'change')} since`
}
