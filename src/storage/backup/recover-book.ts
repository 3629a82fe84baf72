/**
 * Safe mode. After a failed write the browser may throw the whole database away at its next start, even when later writes
 * were acknowledged. So: everything out to a file, the file checked, the database removed and founded anew, everything back
 * in, and the two compared to the byte. Nothing is removed before the file was read back whole. Where the browser has
 * thrown the database away already, the second copy fills the new one as far as it reaches.
 */
import type { Keep, Recovered, Tally } from '../../domain/ports'
import type { Id } from '../../domain/records/scalars'
import type { ViewRules } from '../../domain/records/view-rules'
import type { Book } from '../book'
import { meta, setMeta, tallyOf } from '../meta'
import { isShorter, openBook } from '../open-book'
import { restoreFromCopy } from '../second-copy/restore-from-copy'
import type { Surroundings } from '../surroundings'
import { settle } from '../settle'
import { exportBook } from './export-book'
import { readBackup } from './read-backup'
import { refillBook } from './refill-book'

export async function recoverBook(
  book: Book,
  rules: ViewRules,
  newLog: () => Id,
  surroundings: Surroundings,
  keep: Keep,
): Promise<Recovered> {
  const { outside, ballast } = surroundings
  await ballast?.drop()
  book.close({ disableAutoOpen: false })
  await book.open()
  const remembered = outside.read(book.name)?.tally
  await settle(book, rules).catch(() => undefined)
  const found = await tallyOf(book).catch(() => undefined) // a browser that dropped the book opens an empty one
  if (remembered && (!found || isShorter(found, remembered)))
    return refillFromCopy(book, rules, newLog, surroundings, remembered)
  const backup = await meta(book, 'backup').catch(() => undefined)
  const file = await meta(book, 'backupFile').catch(() => undefined)
  const out = await exportBook(book, (bytes) => keep.write(bytes))
  await keep.close()
  const check = await readBackup(await keep.read())
  if (check.kind !== 'whole' || check.root !== out.root)
    return not('the file does not read back as it was written; nothing was removed')

  await book.delete({ disableAutoOpen: false })
  await surroundings.freshLog?.() // or the new book is written behind what the failed write has torn
  await openBook(book, newLog, { ...outside, read: () => undefined }) // the alarm stays set: until the end only the file holds it all
  const refilled = await refillBook(book, rules, await keep.read())
  if (refilled.check.kind !== 'whole') return not('the file could not be read in again: keep it')
  if (backup) await setMeta(book, 'backup', backup)
  if (file) await setMeta(book, 'backupFile', file)
  const again = await exportBook(book, () => {})
  if (again.root !== out.root) return not('the new book differs from the file: keep the file')
  recovered(book, refilled.tally, surroundings)
  return { kind: 'recovered', counts: out.counts, lost: out.lost }
}

async function refillFromCopy(
  book: Book,
  rules: ViewRules,
  newLog: () => Id,
  surroundings: Surroundings,
  remembered: Tally,
): Promise<Recovered> {
  await surroundings.freshLog?.() // as above, where the browser has kept a part of it
  await openBook(book, newLog, surroundings.outside)
  const restored = await restoreFromCopy(book, rules, surroundings.secondCopy)
  const tally = restored?.tally ?? (await tallyOf(book))
  if (isShorter(tally, remembered)) return { kind: 'lost', remembered, found: tally }
  const { counts } = await exportBook(book, () => {})
  recovered(book, tally, surroundings)
  return { kind: 'recovered', counts, lost: [] }
}

function recovered(book: Book, tally: Tally, { outside, ballast }: Surroundings): void {
  outside.forget(book.name)
  outside.write(book.name, tally)
  ballast?.layLater()
}

const not = (problem: string): Recovered => ({ kind: 'not-recovered', problem })
