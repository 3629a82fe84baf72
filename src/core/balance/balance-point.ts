import type { Arrow } from '../arrow/arrow'
import { type Length, type Mass, sameDimension, sum } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { arrowBalanceProblems } from './arrow-balance-problems'
import { BALANCE_BOUNDS } from './balance-bounds'
import { massPoints } from './mass-points'

export interface Balance {
  readonly mass: Mass
  /** Ahead of the throat. */
  readonly point: Length
}

/**
 * Weight and balance point of an arrow from where each part sits: every part's weight counts at its own centre.
 *
 *   B = Σ mᵢ·xᵢ / Σ mᵢ
 *
 * @returns both, or what is wrong with the arrow
 *
 * Source: centre of mass; positions from the throat as in [F1435].
 */
export function balancePoint(arrow: Arrow): Outcome<Balance> {
  const refused = refusal(arrowBalanceProblems(arrow))
  if (refused) return refused
  const points = massPoints(arrow)
  const mass = sum(...points.map((point) => point.mass))
  const light = refusal(outside('arrow weight', mass, BALANCE_BOUNDS.weight, 'gr'))
  if (light) return light
  const moment = points.reduce((total, point) => total + point.mass * point.at, 0) // kg·m
  const point = sameDimension(arrow.length, moment / mass)
  return known(
    { mass, point },
    {
      equation: 'B = Σ m·x/Σ m',
      inputs: points.flatMap(({ name, mass: m, at }) => [
        term(`weight of ${name}`, m, 'gr'),
        term(`centre of ${name}`, at, 'in'),
      ]),
      result: [term('weight', mass, 'gr'), term('balance point', point, 'in')],
      source: ['F1435'],
    },
  )
}
