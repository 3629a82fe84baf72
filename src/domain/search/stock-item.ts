/** One thing on the shelf that a line of a plan can take: a part from a lot, and what one piece is expected to weigh. */
import type { Id } from '../records/scalars'
import type { Part, PartKind, PartOf } from '../stock/part'

export interface StockItem<P extends Part = Part> {
  readonly part: Id
  readonly lot: Id | null
  /** A singly numbered piece. */
  readonly no?: string
  readonly record: P
  /** Pieces on hand that no other job has reserved. */
  readonly free: number
  /** Expected weight of one piece, gr; of a shaft, gr per inch. */
  readonly weightGr: number
  /** Scatter of one piece about its lot's mean, 1 s.d., in the same unit. */
  readonly ownSdGr: number
  /** How well the lot's mean is known, 1 s.d.: an error that all arrows of the set share. */
  readonly sharedSdGr: number
}

export type StockItemOf<K extends PartKind> = StockItem<PartOf<K>>

export const isOfKind = <K extends PartKind>(item: StockItem, ...kinds: readonly K[]): item is StockItemOf<K> =>
  (kinds as readonly PartKind[]).includes(item.record.kind)
