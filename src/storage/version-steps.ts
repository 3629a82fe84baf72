/** What a new schema number changes in a book that an earlier app wrote: its indexes. No record is touched. */
import type { Transaction } from 'dexie'
import type { LotView } from '../domain/stock/lot-view'
import { isUsedUp } from '../domain/stock/lot-view'

/** 1 to 2: a lot names its part in the index, and one that is used up is no longer on the shelf. See decision 0014. */
export async function lotsOffTheShelf(transaction: Transaction): Promise<void> {
  const facts = transaction.table<{ readonly hash: string; readonly body: { readonly part: string } }>('facts')
  const heads = transaction.table<{ heads: readonly string[]; of: readonly string[] }>('heads')
  const partOf = new Map<string, string>()
  const ofLots = facts.where('[kind+subject]').between(['lot'], ['lot', []])
  await ofLots.each(({ hash, body }) => partOf.set(hash, body.part))
  await heads.toCollection().modify((row) => {
    row.of = [...new Set(row.heads.flatMap((hash) => partOf.get(hash) ?? []))]
  })
  await transaction
    .table<LotView & { onShelf?: 1 }>('lotView')
    .toCollection()
    .modify((row) => {
      if (!isUsedUp(row)) row.onShelf = 1
    })
}
