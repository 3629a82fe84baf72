/** One quantity out of an answer that holds several, with the same findings and working. */
import type { Outcome } from '../../core/outcome'

export const partOf = <T, P>(outcome: Outcome<T>, pick: (value: T) => P): Outcome<P> =>
  outcome.ok ? { ...outcome, value: pick(outcome.value) } : outcome
