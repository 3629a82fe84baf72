import type { Dimension, UnitOf } from '../../../core/quantity'
import { inUnit } from '../../../core/quantity'
import { Read } from '../read'
import type { Dot } from './dot-plot'

/** A dot in the table twin: what was measured, and its reading, marked `name.key`. */
export const dotCells = <D extends Dimension>(name: string, dot: Dot<D>, unit: UnitOf<D>, decimals: number) => [
  <span key="label" data-label="">
    {dot.label}
  </span>,
  <Read key="value" name={`${name}.${dot.key}`} value={inUnit(dot.value, unit)} unit={unit} decimals={decimals} bare />,
]
