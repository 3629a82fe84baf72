/**
 * From a text to a weight of a lot, in a weighing session. What could be a slip, or is unlike the others, is asked about
 * and kept when it is meant; nothing is dropped.
 */
import { difference, inGrains } from '../../core/quantity'
import type { Slip } from '../bench/slips'
import { slipsOf } from '../bench/slips'
import type { EntryProblem } from '../entry/parse-quantity'
import { parseQuantity } from '../entry/parse-quantity'
import { lotExpectation } from './lot-expectation'
import type { LotView } from './lot-view'
import type { Part } from './part'

export const SESSION_WEIGHT = { unit: 'gr', min: 0.05, max: 5000, decimals: 1 } as const

export type WeighingAnswer =
  | { readonly kind: 'taken'; readonly weightGr: number; readonly raw: string }
  | { readonly kind: 'asked'; readonly slips: readonly Slip[]; readonly weightGr: number; readonly raw: string }
  | { readonly kind: 'refused'; readonly problem: EntryProblem }
  | { readonly kind: 'over capacity'; readonly weightGr: number; readonly capacityGr: number }

/**
 * @param pieces that lie on the pan together
 * @param sure the builder looked again and means it
 */
export function takeWeighing(
  text: string,
  pieces: number,
  of: { readonly part: Part; readonly view: LotView | undefined; readonly capacityGr: number | undefined },
  sure = false,
): WeighingAnswer {
  const entry = parseQuantity(text, SESSION_WEIGHT)
  if (entry.kind === 'problem') return { kind: 'refused', problem: entry.problem }
  const { value: weightGr, raw } = entry
  const { part, view, capacityGr } = of
  if (capacityGr !== undefined && weightGr > capacityGr) return { kind: 'over capacity', weightGr, capacityGr }
  const expected = lotExpectation(part, view)
  if (sure || !expected.ok || part.weightGr === 0) return { kind: 'taken', weightGr, raw }
  const { value, high } = expected.value.estimate
  const half = inGrains(difference(high, value)) * pieces
  const slips = slipsOf(weightGr, 'gr', { expected: { value: inGrains(value) * pieces, half, closure: false } })
  return slips.length === 0 ? { kind: 'taken', weightGr, raw } : { kind: 'asked', slips, weightGr, raw }
}
