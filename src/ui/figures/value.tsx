/** Numbers that come from the core, each marked so that a check can walk a page and find every one. */
import { inUnit } from '../../core/quantity'
import type { Dimension, Quantity, Unit, UnitOf } from '../../core/quantity'
import { useUnits } from '../app/units'
import { showNumber } from '../words/format'
import { inSystem } from '../words/unit-systems'
import { markOf } from './mark-of'
import look from './value.module.css'

export interface ValueProps<D extends Dimension> {
  /** Where it belongs and what it is, as a path: `sheet.speed`. */
  name: string
  of: Quantity<D>
  /** The trade's unit; in metric view its stand-in is shown. */
  unit: UnitOf<D>
  decimals: number
  /** Leaves the unit out where a heading already names it. */
  bare?: boolean
}

/** One figure in the running text: `204.8 ft/s`. */
export function Value<D extends Dimension>({ name, of, unit, decimals, bare = false }: ValueProps<D>) {
  const { attributes, text, suffix } = markOf(name, of, unit, decimals, useUnits())
  return (
    <span className={look.value}>
      <span {...attributes}>{text}</span>
      {bare ? null : <span className={look.unit}>{suffix}</span>}
    </span>
  )
}

/** The same inside a drawing's text. */
export function SvgValue<D extends Dimension>({ name, of, unit, decimals, bare = false }: ValueProps<D>) {
  const { attributes, text, suffix } = markOf(name, of, unit, decimals, useUnits())
  return (
    <>
      <tspan {...attributes}>{text}</tspan>
      {bare ? null : <tspan>{suffix}</tspan>}
    </>
  )
}

/** Two ends, marked `name.low` and `name.high`: `780 … 900 gr`. Ends that round alike are shown as one, `name`. */
export function RangeValue<D extends Dimension>({
  name,
  low,
  high,
  unit,
  decimals,
  bare = false,
}: Omit<ValueProps<D>, 'of'> & { low: Quantity<D>; high: Quantity<D> }) {
  const shown = inSystem(unit, decimals, useUnits())
  const ends = [low, high].map((end) => showNumber(inUnit(end, shown.unit), shown.decimals))
  if (ends[0] === ends[1]) return <Value name={`${name}.low`} of={low} unit={unit} decimals={decimals} bare={bare} />
  return (
    <span className={look.value}>
      <Value name={`${name}.low`} of={low} unit={unit} decimals={decimals} bare /> …{' '}
      <Value name={`${name}.high`} of={high} unit={unit} decimals={decimals} bare={bare} />
    </span>
  )
}

/** A figure that comes as a plain number in a unit of a table's row; its heading names the unit. */
export function PlainValue({ name, of, unit, decimals }: { name: string; of: number; unit: Unit; decimals: number }) {
  return (
    <span className={look.value} data-figure={name} data-value={of} data-unit={unit} data-decimals={decimals}>
      {showNumber(of, decimals)}
    </span>
  )
}
