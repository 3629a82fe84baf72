/**
 * From a text to a reading: the one way that a typed number, a keyboard scale's digits and a serial scale's line take. The
 * answer is a reading to be kept, a question about a slip with the reading as it would be kept, or the reason why not.
 */
import type { EntryProblem } from '../entry/parse-quantity'
import { parseQuantity } from '../entry/parse-quantity'
import type { DataPoint } from './data-points'
import { DATA_POINTS } from './data-points'
import type { Reading } from './reading'
import type { Before, Slip } from './slips'
import { slipsOf } from './slips'

export interface Taking extends Before {
  readonly point: DataPoint
  readonly source: Reading['source']
  readonly scale: string
  /** False for what a serial scale marked as still moving; such a reading is never taken. */
  readonly stable: boolean
  readonly attempt: number
  readonly takenAt: string
  /** The most the scale can weigh, gr. */
  readonly capacityGr?: number | undefined
}

export type TakeAnswer =
  | { readonly kind: 'taken'; readonly reading: Reading }
  | { readonly kind: 'asked'; readonly slips: readonly Slip[]; readonly reading: Reading }
  | { readonly kind: 'refused'; readonly raw: string; readonly problem: EntryProblem }
  | { readonly kind: 'unstable'; readonly raw: string }
  | { readonly kind: 'over capacity'; readonly raw: string; readonly value: number; readonly capacityGr: number }

/** @param sure the builder looked again and means it: slips are not asked about a second time */
export function takeReading(text: string, taking: Taking, sure = false): TakeAnswer {
  const { point, source, scale, stable, attempt, takenAt, capacityGr } = taking
  if (!stable) return { kind: 'unstable', raw: text }
  const asked = DATA_POINTS[point]
  const entry = parseQuantity(text, asked)
  if (entry.kind === 'problem') return { kind: 'refused', raw: text, problem: entry.problem }
  const { value } = entry
  if (asked.unit === 'gr' && capacityGr !== undefined && value > capacityGr) {
    return { kind: 'over capacity', raw: text, value, capacityGr }
  }
  const reading: Reading = { point, value, unit: asked.unit, raw: text, source, stable, attempt, scale, takenAt }
  const slips = sure ? [] : slipsOf(value, asked.unit, taking)
  return slips.length === 0 ? { kind: 'taken', reading } : { kind: 'asked', slips, reading }
}
