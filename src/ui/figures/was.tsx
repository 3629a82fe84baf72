/** What a figure was when the sheet was last frozen; nothing where it reads the same now. */
import { inUnit } from '../../core/quantity'
import type { Dimension, Quantity, UnitOf } from '../../core/quantity'
import { useUnits } from '../app/units'
import { showNumber } from '../words/format'
import { inSystem } from '../words/unit-systems'
import { Value } from './value'
import look from './was.module.css'

interface WasProps<D extends Dimension> {
  /** The figure's own name; this one is `name.was`. */
  name: string
  of: Quantity<D>
  /** What it is now; undefined where there is none. */
  now: Quantity<D> | undefined
  unit: UnitOf<D>
  decimals: number
}

export function Was<D extends Dimension>({ name, of, now, unit, decimals }: WasProps<D>) {
  const shown = inSystem(unit, decimals, useUnits())
  const text = (value: Quantity<D>) => showNumber(inUnit(value, shown.unit), shown.decimals)
  if (now !== undefined && text(now) === text(of)) return null
  return (
    <span className={look.was}>
      changed: was <Value name={`${name}.was`} of={of} unit={unit} decimals={decimals} /> as frozen
    </span>
  )
}
