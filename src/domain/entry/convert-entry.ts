/** A typed number carried from the unit it was typed in to the unit its field is kept in. */
import { celsius, fahrenheit, inCelsius, inFahrenheit, kelvins, UNITS } from '../../core/quantity'
import type { Dimension } from '../../core/quantity'
import type { EntryUnit } from './unit-names'

/** Dimension of an entry's unit. */
export const entryDimension = (unit: EntryUnit): Dimension =>
  unit === '°C' || unit === '°F' ? 'temperature' : UNITS[unit].dimension

const toSi = (n: number, unit: EntryUnit): number =>
  unit === '°C' ? celsius(n) : unit === '°F' ? fahrenheit(n) : n * UNITS[unit].si

/** `n` in `from`, as a number in `to`; both of one dimension. The same unit gives the same number, to the last bit. */
export function convertEntry(n: number, from: EntryUnit, to: EntryUnit): number {
  if (from === to) return n
  const si = toSi(n, from)
  if (to === '°C') return inCelsius(kelvins(si))
  return to === '°F' ? inFahrenheit(kelvins(si)) : si / UNITS[to].si
}
