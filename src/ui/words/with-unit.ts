/** A heading with the unit of what stands under it: `Speed, ft/s`; a bare number has none. */
import type { EntryUnit } from '../../domain/entry/unit-names'
import { writtenUnit } from './unit-words'

export const withUnit = (label: string, unit: EntryUnit): string =>
  writtenUnit(unit) === '' ? label : `${label}, ${writtenUnit(unit)}`
