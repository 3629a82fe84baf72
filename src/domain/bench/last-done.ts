/** What *Undo* takes back at a step: the confirmation if there is one, else the last reading that stands. */
import type { Bench, BenchArrow } from './bench'
import type { KeptReading } from './built'
import type { Step } from './route'

export type LastDone =
  | { readonly kind: 'confirmed'; readonly arrow: BenchArrow | null }
  | { readonly kind: 'read'; readonly arrow: BenchArrow; readonly kept: KeptReading }

export function lastDone(bench: Bench, step: Step, arrow: BenchArrow | null): LastDone | undefined {
  const isConfirmed = (all: readonly { readonly step: string }[]) => all.some((each) => each.step === step.key)
  if (step.confirm === 'set' && isConfirmed(bench.confirmed)) return { kind: 'confirmed', arrow: null }
  if (arrow === null) return undefined
  if (step.confirm === 'arrow' && isConfirmed(arrow.confirmed)) return { kind: 'confirmed', arrow }
  const kept = arrow.readings.findLast((each) => each.withdrawn === null && each.step === step.key)
  return kept && { kind: 'read', arrow, kept }
}
