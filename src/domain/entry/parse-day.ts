/**
 * The one parser of typed days: `14 Jan 2027`, `Jan 14`, `14/1/2027`, `2027-01-14`. The order of two bare numbers is not
 * guessed: where both orders are days, the person is asked. Without a year it is the next such day.
 */
export type DayProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'not a day' }
  | { readonly code: 'no such day' }
  | { readonly code: 'two readings'; readonly days: readonly [string, string] }

export type DayEntry =
  /** `day` is ISO 8601, without a time zone. */
  | { readonly kind: 'day'; readonly day: string; readonly raw: string }
  | { readonly kind: 'problem'; readonly problem: DayProblem; readonly raw: string }

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']
const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})$/
const WORD_SECOND = /^(\d{1,2})(?:st|nd|rd|th)?[ ./-]*([a-z]{3,9})\.?[ ,./-]*(\d{4}|\d{2})?$/
const WORD_FIRST = /^([a-z]{3,9})\.?[ ./-]*(\d{1,2})(?:st|nd|rd|th)?(?:[ ,./-]+(\d{4}|\d{2}))?$/
const NUMBERS = /^(\d{1,2})[ ./-]+(\d{1,2})(?:[ ./-]+(\d{4}|\d{2})|\.)?$/

/** @param today an ISO day; stands in for a missing year */
export function parseDay(text: string, today: string): DayEntry {
  const plain = text.trim().replaceAll(/\s+/gu, ' ').toLowerCase()
  const problem = (p: DayProblem): DayEntry => ({ kind: 'problem', problem: p, raw: text })
  if (plain === '') return problem({ code: 'empty' })
  if (plain.length > 40) return problem({ code: 'not a day' })

  const said = candidates(plain)
  if (said === undefined) return problem({ code: 'not a day' })
  const days = [...new Set(said.map(([y, m, d]) => dayOf(y, m, d, today)).filter((day) => day !== undefined))]
  if (days[0] === undefined) return problem({ code: 'no such day' })
  if (days[1] !== undefined) return problem({ code: 'two readings', days: [days[0], days[1]] })
  return { kind: 'day', day: days[0], raw: text }
}

type Said = [year: string | undefined, month: number, day: number]

function candidates(plain: string): Said[] | undefined {
  const iso = ISO.exec(plain)
  if (iso) return [[iso[1], Number(iso[2]), Number(iso[3])]]
  const second = WORD_SECOND.exec(plain)
  if (second) return named(second[2]!, second[1]!, second[3])
  const first = WORD_FIRST.exec(plain)
  if (first) return named(first[1]!, first[2]!, first[3])
  const numbers = NUMBERS.exec(plain)
  if (!numbers) return undefined
  const [a, b] = [Number(numbers[1]), Number(numbers[2])]
  return [
    [numbers[3], b, a],
    [numbers[3], a, b],
  ]
}

function named(word: string, day: string, year: string | undefined): Said[] | undefined {
  const month = MONTHS.indexOf(word.slice(0, 3)) + 1
  return month === 0 ? undefined : [[year, month, Number(day)]]
}

/** The ISO day, or nothing when the calendar has none. */
function dayOf(said: string | undefined, month: number, day: number, today: string): string | undefined {
  const thisYear = Number(today.slice(0, 4))
  const year = said === undefined ? thisYear : said.length === 2 ? 2000 + Number(said) : Number(said)
  const iso = isoDay(year, month, day)
  if (said !== undefined) return iso
  return iso === undefined || iso < today ? isoDay(year + 1, month, day) : iso
}

function isoDay(year: number, month: number, day: number): string | undefined {
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return undefined
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-')
}

/** Gregorian calendar. */
function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1]!
}
