/** The sentence for an entry that could not be taken: which field, what was entered, what is expected. */
import type { Asked, EntryProblem } from '../../domain/entry/parse-quantity'
import type { DayProblem } from '../../domain/entry/parse-day'
import { entryDimension } from '../../domain/entry/convert-entry'
import type { EntryUnit } from '../../domain/entry/unit-names'
import { showLongDay } from './dates'
import { showPlain } from './format'
import { saidUnit } from './unit-words'

const DIMENSION_WORDS: Partial<Record<string, string>> = {
  mass: 'a weight',
  length: 'a length',
  speed: 'a speed',
  force: 'a draw weight',
  temperature: 'a temperature',
  angle: 'an angle',
  ratio: 'a share',
  time: 'a time',
}

/** What the field takes: `10 to 150 pounds`, `1 to 12, a whole number`. */
export function expectedWords(asked: Asked): string {
  const range = `${showPlain(asked.min)} to ${showPlain(asked.max)}`
  if (asked.unit === '1') return asked.whole ? `a whole number, ${range}` : range
  return `${range} ${saidUnit(asked.unit)}${asked.whole ? ', a whole number' : ''}`
}

/** @param field the label as it stands on the page */
export function entryWords(field: string, problem: EntryProblem, raw: string, asked: Asked): string {
  const expected = `Expected: ${expectedWords(asked)}.`
  const typed = `“${raw.trim()}”`
  switch (problem.code) {
    case 'empty':
      return `${field} is empty. ${expected}`
    case 'too long':
      return `${field}: ${raw.trim().slice(0, 12)}… is too long for a number. ${expected}`
    case 'not a number':
      return `${field}: ${typed} is not a number. ${expected}`
    case 'more than one number':
      return `${field}: ${typed} holds more than one number. ${expected}`
    case 'unknown unit':
      return `${field}: the unit in ${typed} is not known here. ${expected}`
    case 'wrong unit':
      return `${field}: ${typed} is in ${saidUnit(problem.typed)}, not ${kindOf(asked.unit)}. ${expected}`
    case 'out of bounds':
      return `${field}: ${typed} is ${problem.value < asked.min ? 'too small' : 'too large'}. ${expected}`
    case 'not whole':
      return `${field}: ${typed} is not a whole number. ${expected}`
    case 'two readings':
      return `${field}: ${typed} could be ${problem.readings.map((n) => showPlain(n)).join(' or ')}. Type it without the comma.`
  }
}

const kindOf = (unit: EntryUnit) => DIMENSION_WORDS[entryDimension(unit)] ?? saidUnit(unit)

export function dayWords(field: string, problem: DayProblem, raw: string): string {
  const typed = `“${raw.trim().slice(0, 40)}”`
  switch (problem.code) {
    case 'empty':
      return `${field} is empty. Expected: a day, such as 14 Jan.`
    case 'not a day':
      return `${field}: ${typed} is not a day. Expected: a day, such as 14 Jan.`
    case 'no such day':
      return `${field}: ${typed} is not in the calendar. Expected: a day, such as 14 Jan.`
    case 'two readings':
      return `${field}: ${typed} could be ${problem.days.map(showLongDay).join(' or ')}. Type the month as a word.`
  }
}
