/** How a unit is written beside a number, and how it is said. */
import type { EntryUnit } from '../../domain/entry/unit-names'

/** A draw weight is said in pounds; that it is a force is the core's business. */
const WRITTEN: Partial<Record<EntryUnit, string>> = { lbf: 'lb', kgf: 'kg', '1': '' }

/** Said in a sentence, where the written form would stumble. */
const SAID: Partial<Record<EntryUnit, string>> = {
  gr: 'grains',
  g: 'grams',
  kg: 'kilograms',
  lb: 'pounds',
  lbf: 'pounds',
  N: 'newtons',
  kgf: 'kilograms',
  in: 'inches',
  thou: 'thousandths of an inch',
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  ft: 'feet',
  yd: 'yards',
  'ft/s': 'feet per second',
  'm/s': 'metres per second',
  ft·lbf: 'foot-pounds',
  J: 'joules',
  'gr/lb': 'grains per pound',
  'gr/in': 'grains per inch',
  '°': 'degrees',
  '°C': 'degrees Celsius',
  '°F': 'degrees Fahrenheit',
  '%': 'percent',
  s: 'seconds',
  min: 'minutes',
  h: 'hours',
  day: 'days',
}

export const writtenUnit = (unit: EntryUnit): string => WRITTEN[unit] ?? unit

export const saidUnit = (unit: EntryUnit): string => SAID[unit] ?? writtenUnit(unit)

/** What follows a number: a space and the unit; nothing between a number and its degree sign. */
export function unitSuffix(unit: EntryUnit): string {
  const written = writtenUnit(unit)
  return written === '' || written === '°' ? written : ` ${written}`
}
