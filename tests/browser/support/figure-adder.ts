/** Gathers what the figures of a page must be, by the names they are marked with. */
import type { Bounds, Estimate, Outcome } from '@/core/outcome'
import type { Dimension, Quantity, UnitOf } from '@/core/quantity'
import { difference, inUnit } from '@/core/quantity'

type Any<D extends Dimension> = Quantity<D> | Estimate<Quantity<D>> | Bounds<Quantity<D>>

/** A figure may stand more than once, at two moments of the work: each value it may have. */
export type ExpectedFigures = Map<string, number[]>

export function adder(into: ExpectedFigures) {
  const one = <D extends Dimension>(name: string, of: Quantity<D>, unit: UnitOf<D>) =>
    into.set(name, [...(into.get(name) ?? []), inUnit(of, unit)])
  return {
    one,
    of<D extends Dimension>(name: string, value: Any<D>, unit: UnitOf<D>) {
      if (typeof value === 'number') return void one(name, value, unit)
      if ('min' in value) {
        one(`${name}.low`, value.min, unit)
        one(`${name}.high`, value.max, unit)
        return
      }
      one(name, value.value, unit)
      one(`${name}.band`, difference(value.high, value.value), unit)
      one(`${name}.low`, value.low, unit)
      one(`${name}.high`, value.high, unit)
    },
    answer<D extends Dimension>(name: string, outcome: Outcome<Any<D>> | undefined, unit: UnitOf<D>) {
      if (outcome?.ok) this.of(name, outcome.value, unit)
    },
  }
}
