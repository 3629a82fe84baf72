import { type Length, type Ratio, ratio } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'

/** B/L − ½. For a length already found to be sound. */
export const focOf = (balance: Length, length: Length): Ratio => ratio(balance / length - 0.5)

/**
 * Front of centre: how far the balance point lies ahead of the middle, as a share of the arrow length.
 *
 *   FOC = B/L − ½
 *
 * @param balance of the complete arrow, head on, ahead of the throat
 * @param length throat to shaft front (or an outsert's shoulder), not to the tip of the head
 * @returns FOC, or `outside-model`
 *
 * Source: [F1435] (formula from memory, agrees with the text).
 */
export function foc(balance: Length, length: Length): Outcome<Ratio> {
  const refused = refusal([
    ...outside('balance point', balance, BALANCE_BOUNDS.balance, 'in'),
    ...outside('arrow length', length, BALANCE_BOUNDS.length, 'in'),
  ])
  if (refused) return refused
  const value = focOf(balance, length)
  return known(value, {
    equation: 'FOC = B/L − ½',
    inputs: [term('balance point', balance, 'in'), term('arrow length', length, 'in')],
    result: [term('FOC', value, '%')],
    source: ['F1435'],
  })
}
