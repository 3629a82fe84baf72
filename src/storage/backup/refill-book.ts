/** Fills a new, empty book from a backup, straight into its tables: no second copy beside it, for there may be no room. */
import type { Source, Tally } from '../../domain/ports'
import type { BackupCheck } from '../../domain/records/backup'
import type { ViewRules } from '../../domain/records/view-rules'
import type { Book, StagedRow } from '../book'
import { forget } from '../forget'
import { setMeta, tallyOf } from '../meta'
import { rebuildAllViews } from '../rebuild-views'
import { readBackup } from './read-backup'
import { stagedRow } from './staged-row'

export async function refillBook(
  book: Book,
  rules: ViewRules,
  source: Source,
): Promise<{ readonly check: BackupCheck; readonly tally: Tally }> {
  const check = await readBackup(source, (records) => {
    const rows = records.map((record) => stagedRow(record, rules))
    return book.transaction('rw', [book.events, book.facts, book.personal, book.photos, book.forgotten], async () => {
      const facts = of(rows, 'fact')
      await book.events.bulkAdd(of(rows, 'event'))
      await book.facts.bulkAdd(facts)
      await forget(book, facts)
      await book.personal.bulkAdd(of(rows, 'personal'))
      await book.photos.bulkAdd(of(rows, 'photo'))
    })
  })
  const tally = await book.transaction('rw', book.tables, async () => {
    const { head } = await tallyOf(book)
    const filled: Tally = { facts: await book.facts.count(), events: await book.events.count(), head }
    await rebuildAllViews(book, rules)
    await setMeta(book, 'tally', filled)
    return filled
  })
  return { check, tally }
}

const of = <K extends StagedRow['kind']>(rows: readonly StagedRow[], kind: K) =>
  rows.filter((row) => row.kind === kind).map((row) => row.record) as Extract<StagedRow, { kind: K }>['record'][]
