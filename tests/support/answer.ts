import type { Outcome } from '@/core/outcome'

/** The value of an outcome that has one; fails the test, naming the findings, when it has none. */
export function answer<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`no answer: ${JSON.stringify(outcome.findings)}`)
  return outcome.value
}
