/** The 95 % band of an estimate: `± 2.1` when it is even, its two ends when it is not. */
import type { Estimate } from '../../core/outcome'
import { difference, inUnit } from '../../core/quantity'
import type { Dimension, Quantity, UnitOf } from '../../core/quantity'
import { useUnits } from '../app/units'
import { showNumber } from '../words/format'
import { inSystem } from '../words/unit-systems'
import { RangeValue, Value } from './value'

interface BandProps<D extends Dimension> {
  /** The figure's own name; the band is `name.band`, its ends `name.low` and `name.high`. */
  name: string
  of: Estimate<Quantity<D>>
  unit: UnitOf<D>
  decimals: number
}

export function Band<D extends Dimension>({ name, of, unit, decimals }: BandProps<D>) {
  const shown = inSystem(unit, decimals, useUnits())
  const below = difference(of.value, of.low)
  const above = difference(of.high, of.value)
  const [lower, upper] = [below, above].map((half) => showNumber(inUnit(half, shown.unit), shown.decimals))
  if (lower !== upper)
    return <RangeValue name={name} low={of.low} high={of.high} unit={unit} decimals={decimals} bare />
  return (
    <>
      ± <Value name={`${name}.band`} of={above} unit={unit} decimals={decimals} bare />
    </>
  )
}
