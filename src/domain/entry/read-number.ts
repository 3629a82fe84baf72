/**
 * The number at the start of a text, in every reading it allows. Comma or point, grouped thousands, fractions as a rule is
 * marked (28 1/2, 28½). "1,200" has two readings; whoever knows the field picks.
 */
export interface NumberRead {
  readonly readings: readonly number[]
  /** What follows the number: the unit, if any. */
  readonly rest: string
}

const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

const FRACTION = /^([+-]?) ?(?:(\d{1,6})[ -])?(\d{1,4})\/(\d{1,4})(?!\d)(.*)$/
const WITH_VULGAR = /^([+-]?) ?(\d{0,6}) ?([½¼¾⅓⅔⅛⅜⅝⅞])(.*)$/
const DECIMAL = /^([+-]?) ?(\d(?:[\d.,]|'(?=\d))*(?: \d{3}(?!\d))*(?:[.,]\d+)?|[.,]\d+)(.*)$/
const GROUPED = /^\d{1,3}(?:[ ',.]\d{3})+$/
const DIGITS = /^\d+$/

/** One spelling for the spaces, dashes and quotes that keyboards and pasted texts bring along. */
export const plainMarks = (text: string) =>
  text.replaceAll(/\s+/gu, ' ').replaceAll(/[−–—]/g, '-').replaceAll(/[″”“]/g, '"').replaceAll(/[′’‘]/g, "'").trim()

/** @param text as `plainMarks` gives it. @returns nothing when no number stands at its start */
export function readNumber(text: string): NumberRead | undefined {
  const vulgar = WITH_VULGAR.exec(text)
  if (vulgar) return signed(vulgar[1]!, [Number(vulgar[2]) + VULGAR[vulgar[3]!]!], vulgar[4]!)

  const fraction = FRACTION.exec(text)
  if (fraction) {
    const [, sign, whole = '0', over, under, rest] = fraction
    return Number(under) === 0 ? undefined : signed(sign!, [Number(whole) + Number(over) / Number(under)], rest!)
  }

  const decimal = DECIMAL.exec(text)
  if (!decimal) return undefined
  const readings = decimalReadings(decimal[2]!)
  return readings.length === 0 ? undefined : signed(decimal[1]!, readings, decimal[3]!)
}

const signed = (sign: string, readings: readonly number[], rest: string): NumberRead => ({
  readings: sign === '-' ? readings.map((n) => 0 - n) : readings,
  rest: rest.trim(),
})

/** The last of two kinds of mark is the decimal one; a lone comma before three digits may be either. */
function decimalReadings(digits: string): number[] {
  if (DIGITS.test(digits)) return [Number(digits)]
  const at = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','))
  const [whole, part] = at < 0 ? [digits, ''] : [digits.slice(0, at), digits.slice(at + 1)]
  const readings: number[] = []

  const wholeIsPlain = whole === '' || DIGITS.test(whole)
  if (at >= 0 && /^\d*$/.test(part) && (wholeIsPlain || isGrouped(whole, digits[at]!)))
    readings.push(Number(`${whole.replaceAll(/\D/g, '') || '0'}.${part}`))

  const onlyPoint = digits.indexOf('.') === at && at >= 0 && digits[at] === '.'
  if (!onlyPoint && isGrouped(digits) && !digits.startsWith('0')) readings.push(Number(digits.replaceAll(/\D/g, '')))
  return readings
}

/** Groups of three, all set apart by one kind of mark, which is not `other`. */
function isGrouped(digits: string, other?: string): boolean {
  const marks = new Set(digits.replaceAll(/\d/g, ''))
  return GROUPED.test(digits) && marks.size === 1 && (other === undefined || !marks.has(other))
}
