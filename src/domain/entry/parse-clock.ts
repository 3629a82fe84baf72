/** The one parser of typed clock times: `14:05`, `14.05`, `14h05`, `1405`, `2:05 pm`. A bare hour is too little said. */
export type ClockEntry =
  | { readonly kind: 'clock'; readonly hour: number; readonly minute: number }
  | { readonly kind: 'problem'; readonly problem: 'empty' | 'not a time' }

const CLOCK = /^(\d{1,2})(?:\s?[:.h]\s?|)(\d{2})\s?(am|pm|a\.m\.|p\.m\.)?$/
const HOUR = /^(\d{1,2})\s?(am|pm|a\.m\.|p\.m\.)$/

export function parseClock(text: string): ClockEntry {
  const plain = text.trim().toLowerCase()
  if (plain === '') return { kind: 'problem', problem: 'empty' }
  const no: ClockEntry = { kind: 'problem', problem: 'not a time' }
  if (plain.length > 12) return no
  const whole = CLOCK.exec(plain)
  const bare = whole === null ? HOUR.exec(plain) : null
  const said = whole ?? bare
  if (said === null) return no
  const half = whole === null ? bare![2] : whole[3]
  const minute = whole === null ? 0 : Number(whole[2])
  const first = Number(said[1])
  if (minute > 59 || first > 23 || (half !== undefined && (first < 1 || first > 12))) return no
  const hour = half === undefined ? first : (first % 12) + (half.startsWith('p') ? 12 : 0)
  return { kind: 'clock', hour, minute }
}
