/** Brings back what the second copy holds and the book has lost, the same way in as a backup. */
import type { ViewRules } from '../../domain/records/view-rules'
import { addStaged } from '../backup/add-staged'
import type { Added } from '../backup/add-staged'
import { stageBackup } from '../backup/stage-backup'
import type { Book } from '../book'
import type { SecondCopy } from './second-copy'

/** Undefined when there is no copy, or nothing in it that the book lacks. It may bring less than was lost. */
export async function restoreFromCopy(
  book: Book,
  rules: ViewRules,
  copy: SecondCopy | undefined,
): Promise<Added | undefined> {
  const source = copy?.read()
  if (!source) return undefined
  const { adds } = await stageBackup(book, rules, source, { order: 'any' })
  return adds.event + adds.fact > 0 ? addStaged(book, rules) : undefined
}
