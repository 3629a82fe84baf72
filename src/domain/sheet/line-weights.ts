/** The items of a forecast gathered by line of the sheet: what a line weighs on one arrow, and how well that is known. */
import { NORMAL_95 } from '../../core/numeric/band'
import type { Origin } from '../../core/outcome'
import type { Mass } from '../../core/quantity'
import { grains, inQuadrature, scaled, sum } from '../../core/quantity'
import type { Id } from '../records/scalars'
import type { PlanItem } from './plan-items'

export interface LineWeight {
  readonly value: Mass
  /** Half the width of its 95 % band. */
  readonly half: Mass
  readonly origin: Origin
}

export function lineWeights(items: readonly PlanItem[]): ReadonlyMap<Id, LineWeight> {
  const byLine = new Map<Id, PlanItem[]>()
  for (const item of items) byLine.set(item.line.id, [...(byLine.get(item.line.id) ?? []), item])
  return new Map(
    [...byLine].map(([line, own]) => {
      const value = sum(grains(0), ...own.map(({ item }) => item.mean))
      const sd = inQuadrature(...own.flatMap(({ item }) => [item.ownSd, item.sharedSd]))
      return [line, { value, half: scaled(sd, NORMAL_95), origin: own[0]!.item.origin }]
    }),
  )
}
