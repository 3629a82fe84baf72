/**
 * Checks that a log is whole: every event fits its hash and follows the one before it. This makes tampering evident; it
 * does not make it impossible, for who can rewrite the whole file can hash it anew.
 */
import { NO_EVENT } from './event'
import type { Event, LogHead } from './event'
import { hashOf } from './hash-of'
import type { Id } from './scalars'

export type ChainProblem =
  | { readonly problem: 'changed'; readonly log: Id; readonly seq: number } // does not fit its hash
  | { readonly problem: 'gap'; readonly log: Id; readonly from: number; readonly to: number } // events missing, both ends included
  | { readonly problem: 'fork'; readonly log: Id; readonly seq: number } // two events in one place
  | { readonly problem: 'unchained'; readonly log: Id; readonly seq: number } // does not name the one before it

export const startOf = (log: Id): LogHead => ({ log, seq: 0, hash: NO_EVENT })

/** Checks the next event of a log. Returns what is wrong and where the log stands after it. */
export function follow(
  head: LogHead,
  event: Event,
): { readonly head: LogHead; readonly problems: readonly ChainProblem[] } {
  const { log, seq } = event
  const problems: ChainProblem[] = []
  if (!fitsHash(event)) problems.push({ problem: 'changed', log, seq })
  if (seq > head.seq + 1) problems.push({ problem: 'gap', log, from: head.seq + 1, to: seq - 1 })
  else if (seq <= head.seq) problems.push({ problem: 'fork', log, seq })
  else if (event.prev !== head.hash) problems.push({ problem: 'unchained', log, seq })
  return { head: { log, seq, hash: event.hash }, problems }
}

/** Whether a record is what its hash says. False also for what has no JSON form. */
export function fitsHash(record: { readonly hash: string }): boolean {
  try {
    return hashOf(record) === record.hash
  } catch {
    return false
  }
}
