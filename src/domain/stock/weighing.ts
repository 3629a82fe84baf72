/** One weight that a lot, a glue or the grinder learned from: taken in a weighing session, or at the bench. */
import type { Hash } from '../records/scalars'
import type { Learned } from '../sheet/sheet'

export interface Weighing {
  /** Of the event that said it; for a figure by difference, of the last reading in it. */
  readonly event: Hash
  readonly at: string
  /** `pass`: what one pass at the grinder took off. */
  readonly what: Learned['what'] | 'pass'
  /** All pieces together, grains. */
  readonly weightGr: number
  readonly pieces: number
  /** The arrow's code, at the bench. */
  readonly arrow?: string
}

/** In the order they were taken, whatever order they were told in. */
export const byTime = (a: Weighing, b: Weighing): number =>
  a.at === b.at ? (a.event < b.event ? -1 : 1) : a.at < b.at ? -1 : 1
