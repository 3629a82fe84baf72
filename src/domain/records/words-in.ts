/**
 * A day as this app writes it, or as much of one as was typed: one word, so that the fourth of March is not found by the
 * third of April.
 */
const DAY = /(?<![\p{Letter}\d-])(?:19|20)\d\d-[01]?\d?(?:-[0-3]?\d?)?(?![\p{Letter}\d-])/gu

/** The words of a text as a search compares them: lower case, without accents, split at what is no letter and no digit. */
export const wordsIn = (text: string): readonly string[] => [
  ...(text.match(DAY) ?? []),
  ...text
    .replaceAll(DAY, ' ')
    .normalize('NFD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
    .split(/[^\p{Letter}\p{Number}.]+/u)
    .map((word) => word.replaceAll(/^\.+|\.+$/g, ''))
    .filter((word) => word !== ''),
]

const LOOSE_DAY = /(?<![\p{Letter}\d./-])((?:19|20)\d\d)([-/. ])([01]?\d)\2([0-3]?\d)(?![\p{Letter}\d-])/gu
const LOOSE_MONTH = /(?<![\p{Letter}\d./-])((?:19|20)\d\d)[/.]([01]\d)(?![\p{Letter}\d./-])/gu

/** A day, or a month, that may be typed with strokes, points or blanks, the year first; undefined where there is none. */
export function dayAsked(text: string): string | undefined {
  const plain = text
    .replaceAll(
      LOOSE_DAY,
      (_, year: string, __, month: string, day: string) => `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`,
    )
    .replaceAll(LOOSE_MONTH, '$1-$2')
  return plain.match(DAY) === null ? undefined : plain
}

/** The words of what somebody asks for. */
export const wordsAsked = (text: string): readonly string[] => wordsIn(dayAsked(text) ?? text)
