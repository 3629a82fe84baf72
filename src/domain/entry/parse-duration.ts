/** The one parser of typed lengths of time: `24 h`, `20 min`, `90 s`, `1 h 30`, `1:30`, `2 days`. A bare number is minutes. */
export type DurationEntry =
  | { readonly kind: 'duration'; readonly seconds: number }
  | { readonly kind: 'problem'; readonly problem: 'empty' | 'not a duration' | 'too long' }

const DAY = 86_400 // s
const UNIT_S: Readonly<Record<string, number>> = { s: 1, m: 60, h: 3600, d: DAY }
const LONGEST_S = 60 * DAY // longer than any glue takes
const PIECE = /(\d{1,4}(?:[.,]\d{1,2})?)\s*(d(?:ays?)?|h(?:ours?|rs?)?|m(?:in(?:utes?)?)?|s(?:ec(?:onds?)?)?)?/y

export function parseDuration(text: string): DurationEntry {
  const plain = text.trim().toLowerCase()
  const problem = (p: 'empty' | 'not a duration' | 'too long'): DurationEntry => ({ kind: 'problem', problem: p })
  if (plain === '') return problem('empty')
  if (plain.length > 30) return problem('not a duration')
  const clock = /^(\d{1,3}):(\d{2})$/.exec(plain)
  const seconds = clock === null ? piecesOf(plain) : Number(clock[1]) * 3600 + Number(clock[2]) * 60
  if (seconds === undefined || !(seconds > 0)) return problem('not a duration')
  return seconds > LONGEST_S ? problem('too long') : { kind: 'duration', seconds }
}

function piecesOf(plain: string): number | undefined {
  let seconds = 0
  let last = Infinity // each unit must be smaller than the one before it
  let rest = plain
  while (rest !== '') {
    PIECE.lastIndex = 0
    const found = PIECE.exec(rest)
    if (found === null) return undefined
    // Without a unit: minutes, as of `1 h 30` and of a bare `20`.
    const unit = UNIT_S[found[2]?.[0] ?? 'm']!
    if (unit >= last) return undefined
    last = unit
    seconds += Number(found[1]!.replace(',', '.')) * unit
    rest = rest.slice(found[0].length).trim()
  }
  return Math.round(seconds)
}
