/** Brings a backup's records beside the book's own, to be looked at before they are added. The book itself is not touched. */
import type { Source } from '../../domain/ports'
import { RECORD_KINDS } from '../../domain/records/backup'
import type { RecordKind, StagedBackup } from '../../domain/records/backup'
import type { Hash, Id } from '../../domain/records/scalars'
import type { ViewRules } from '../../domain/records/view-rules'
import type { Book, StagedRow } from '../book'
import { fence } from '../fence'
import { NONE } from './format'
import { readBackup } from './read-backup'
import type { Reading, RecordLine } from './read-backup'
import { stagedRow } from './staged-row'

export async function stageBackup(
  book: Book,
  rules: ViewRules,
  source: Source,
  reading?: Reading,
): Promise<StagedBackup> {
  await discardStaged(book)
  const adds: Record<RecordKind, number> = { ...NONE }
  const alreadyThere: Record<RecordKind, number> = { ...NONE }
  const jobs = new Set<Id>()
  let forgotten = 0
  const take = (records: readonly RecordLine[]) =>
    book.transaction(
      'rw',
      [book.meta, book.staged, book.events, book.facts, book.personal, book.photos, book.forgotten],
      async () => {
        await fence(book)
        const rows = records.map((record) => stagedRow(record, rules))
        const there = await present(book, rows)
        const gone = new Set(
          (await book.forgotten.bulkGet(rows.map((row) => row.hash))).flatMap((row) => row?.hash ?? []),
        )
        const kept = rows.filter((row) => !gone.has(row.hash))
        forgotten += rows.length - kept.length
        for (const row of kept) {
          const counts = there.has(row.hash) ? alreadyThere : adds
          counts[row.kind] += 1
          if (row.kind === 'event' && row.record.job !== null && !there.has(row.hash)) jobs.add(row.record.job)
        }
        await book.staged.bulkPut(kept.filter((row) => !there.has(row.hash)))
      },
    )
  const check = await readBackup(source, take, reading)
  if (check.kind === 'refused') await discardStaged(book)
  return { check, adds, alreadyThere, forgotten, jobs: [...jobs] }
}

export const discardStaged = (book: Book): Promise<void> => book.staged.clear()

const tableOf = (book: Book, kind: RecordKind) =>
  book.table<unknown, Hash>({ event: 'events', fact: 'facts', personal: 'personal', photo: 'photos' }[kind])

async function present(book: Book, rows: readonly StagedRow[]): Promise<ReadonlySet<Hash>> {
  const there = new Set<Hash>()
  for (const kind of RECORD_KINDS) {
    const hashes = rows.flatMap((row) => (row.kind === kind ? [row.hash] : []))
    const keys = hashes.length === 0 ? [] : await tableOf(book, kind).where('hash').anyOf(hashes).primaryKeys()
    for (const key of keys) there.add(key)
  }
  return there
}
