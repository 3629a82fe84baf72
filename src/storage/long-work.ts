/** What takes long on a large book and changes nothing of it: checking a file, laying a backup beside, verifying. */
import type { Source } from '../domain/ports'
import type { BackupCheck, StagedBackup } from '../domain/records/backup'
import type { BookReport } from '../domain/records/book-report'
import type { ViewRules } from '../domain/records/view-rules'
import { readBackup } from './backup/read-backup'
import { stageBackup } from './backup/stage-backup'
import type { Book } from './book'
import { verify } from './verify'

export type Work =
  | { readonly do: 'check'; readonly source: Source }
  | { readonly do: 'stage'; readonly source: Source }
  | { readonly do: 'verify' }
export type WorkAnswer<D extends Work['do']> = { check: BackupCheck; stage: StagedBackup; verify: BookReport }[D]

/** @param progress bytes of the file read, or records checked */
export async function longWork(
  book: Book,
  rules: ViewRules,
  work: Work,
  progress: (done: number) => void = () => {},
): Promise<WorkAnswer<Work['do']>> {
  if (work.do === 'check') return readBackup(work.source, () => {}, { progress })
  if (!book.isOpen()) await book.open()
  return work.do === 'stage' ? stageBackup(book, rules, work.source, { progress }) : verify(book, rules, progress)
}
