/**
 * The one parser of typed numbers: form, scale and importer alike. A text in, a number in the field's unit or the reason
 * why not, as data. Nothing is guessed: what could be read in two ways inside the field's bounds is asked about. The text
 * is kept as it was.
 */
import { convertEntry, entryDimension } from './convert-entry'
import { plainMarks, readNumber } from './read-number'
import { UNIT_NAMES } from './unit-names'
import type { EntryUnit } from './unit-names'

/** What a field asks for: its unit, and its bounds as numbers in that unit. Data points and questions fit as they are. */
export interface Asked {
  readonly unit: EntryUnit
  readonly min: number
  readonly max: number
  /** Only whole numbers. */
  readonly whole?: boolean
  /** An inch field where 340 may be said for 0.340, as spines are. */
  readonly thousandths?: boolean
}

export type EntryProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'too long' }
  | { readonly code: 'not a number' }
  | { readonly code: 'more than one number' }
  | { readonly code: 'unknown unit'; readonly typed: string }
  | { readonly code: 'wrong unit'; readonly typed: EntryUnit }
  | { readonly code: 'out of bounds'; readonly value: number }
  | { readonly code: 'not whole' }
  | { readonly code: 'two readings'; readonly readings: readonly [number, number] }

export type Entry =
  | {
      readonly kind: 'number'
      /** In the field's unit. */
      readonly value: number
      readonly unit: EntryUnit
      /** The unit it was typed in, or the one that stood beside the field. */
      readonly typed: EntryUnit
      readonly raw: string
    }
  | { readonly kind: 'problem'; readonly problem: EntryProblem; readonly raw: string }

const LONGEST = 40

/**
 * @param text as typed, pasted or sent by a scale
 * @param asked the field's unit and bounds
 * @param beside the unit that stands beside the field when it is another than the one kept (metric view)
 */
export function parseQuantity(text: string, asked: Asked, beside: EntryUnit = asked.unit): Entry {
  const problem = (p: EntryProblem): Entry => ({ kind: 'problem', problem: p, raw: text })
  if (text.length > LONGEST) return problem({ code: text.trim() === '' ? 'empty' : 'too long' })
  const plain = plainMarks(text)
  if (plain === '') return problem({ code: 'empty' })

  const read = readNumber(plain)
  if (read === undefined) return problem({ code: 'not a number' })
  if (/\d/.test(read.rest)) return problem({ code: 'more than one number' })

  const typed = unitOf(read.rest, asked.unit, beside)
  if (typeof typed === 'object') return problem(typed)

  const said = asked.thousandths && read.rest === '' ? read.readings.flatMap((n) => [n, n / 1000]) : read.readings
  const values = said.map((n) => convertEntry(n, typed, asked.unit))
  const [value, second] = values.filter((n) => n >= asked.min && n <= asked.max)
  if (value === undefined) return problem({ code: 'out of bounds', value: values[0]! })
  if (second !== undefined) return problem({ code: 'two readings', readings: [value, second] })
  if (asked.whole && !Number.isInteger(value)) return problem({ code: 'not whole' })
  return { kind: 'number', value, unit: asked.unit, typed, raw: text }
}

function unitOf(typed: string, kept: EntryUnit, beside: EntryUnit): EntryUnit | EntryProblem {
  if (typed === '') return beside
  const known = Object.hasOwn(UNIT_NAMES, typed.toLowerCase()) ? UNIT_NAMES[typed.toLowerCase()]! : []
  const fitting = known.find((unit) => entryDimension(unit) === entryDimension(kept))
  if (fitting !== undefined) return fitting
  return known[0] === undefined ? { code: 'unknown unit', typed } : { code: 'wrong unit', typed: known[0] }
}
