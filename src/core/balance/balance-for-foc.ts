import { type Length, type Ratio, scaled } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'

/**
 * Where an arrow of a given length must balance for a given FOC.
 *
 *   B = L·(FOC + ½)
 *
 * @returns the balance point ahead of the throat, or `outside-model`
 *
 * Source: [F1435], solved for B.
 */
export function balanceForFoc(foc: Ratio, length: Length): Outcome<Length> {
  const refused = refusal([
    ...outside('FOC', foc, BALANCE_BOUNDS.foc, '%'),
    ...outside('arrow length', length, BALANCE_BOUNDS.length, 'in'),
  ])
  if (refused) return refused
  const point = scaled(length, foc + 0.5)
  return known(point, {
    equation: 'B = L·(FOC + ½)',
    inputs: [term('FOC', foc, '%'), term('arrow length', length, 'in')],
    result: [term('balance point', point, 'in')],
    source: ['F1435'],
  })
}
