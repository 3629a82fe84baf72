/** A number that was read, not computed, as the record keeps it: bold, and marked `data-read`. */
import { convertEntry } from '../../domain/entry/convert-entry'
import type { EntryUnit } from '../../domain/entry/unit-names'
import { useUnits } from '../app/units'
import { showNumber } from '../words/format'
import { inSystem } from '../words/unit-systems'
import { unitSuffix } from '../words/unit-words'
import look from './read.module.css'

interface ReadProps {
  /** What was read, as a path: `arrow.3.cutWeight`. */
  name: string
  value: number
  /** The unit the record keeps it in. */
  unit: EntryUnit
  decimals: number
  bare?: boolean
  /** Corrected since: kept in sight, struck through. */
  withdrawn?: boolean
}

export function Read({ name, value, unit, decimals, bare = false, withdrawn = false }: ReadProps) {
  const shown = inSystem(unit, decimals, useUnits())
  const n = convertEntry(value, unit, shown.unit)
  const Mark = withdrawn ? 's' : 'b'
  return (
    <Mark className={look.read}>
      <span data-read={name} data-value={n} data-unit={shown.unit} data-decimals={shown.decimals}>
        {showNumber(n, shown.decimals)}
      </span>
      {bare ? null : <span className={look.unit}>{unitSuffix(shown.unit)}</span>}
    </Mark>
  )
}
