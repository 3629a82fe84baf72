import { percent, type Ratio } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'

export type FocClass = 'normal' | 'high' | 'extreme' | 'ultra-extreme'

/** Each class and the highest FOC that still belongs to it; above the last, ultra-extreme. */
export const FOC_CLASSES = Object.freeze([
  { name: 'normal', upTo: percent(12) },
  { name: 'high', upTo: percent(19) },
  { name: 'extreme', upTo: percent(30) },
] as const)

/**
 * The class of an FOC. These are one author's field-study classes, not a standard.
 *
 * @returns the class, or `outside-model`
 *
 * Source: [ASHBY08].
 */
export function focClass(foc: Ratio): Outcome<FocClass> {
  const refused = refusal(outside('FOC', foc, BALANCE_BOUNDS.foc, '%'))
  if (refused) return refused
  const found = FOC_CLASSES.find(({ upTo }) => foc <= upTo)
  return known(found?.name ?? 'ultra-extreme', {
    equation: 'up to 12 % normal, over 12 to 19 high, over 19 to 30 extreme, over 30 ultra-extreme',
    inputs: [term('FOC', foc, '%')],
    result: [],
    source: ['ASHBY08'],
    note: 'One author’s field-study classes, not a standard.',
  })
}
