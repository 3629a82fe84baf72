/**
 * One line of a scale's plain text output. Scales differ in order and spelling, and agree in what they say: whether it has
 * settled, a sign, digits, a unit. Whatever is not plainly such a line is noise and says nothing. Common practice of
 * balances with a serial line, no source [CP]; no maker's protocol is followed.
 */

/** Units that scales send, and the grains that one of them is; only grains are taken at the bench. */
const SENT_UNITS: Readonly<Record<string, ScaleUnit>> = {
  g: 'g',
  gn: 'gr',
  gr: 'gr',
  grn: 'gr',
  grain: 'gr',
  grains: 'gr',
  oz: 'oz',
  ozt: 'ozt',
  ct: 'ct',
  kg: 'kg',
  lb: 'lb',
  dwt: 'dwt',
  mg: 'mg',
}
/** `other`: by a pattern of the shop's own, whatever is not its word for grains. */
export type ScaleUnit = 'other' | 'g' | 'gr' | 'oz' | 'ozt' | 'ct' | 'kg' | 'lb' | 'dwt' | 'mg'

export type ScaleLine =
  | {
      readonly kind: 'weight'
      readonly raw: string
      readonly value: number
      /** The digits as sent, sign included: what two equal lines are compared by. */
      readonly digits: string
      /** Absent: the scale sends none. */
      readonly unit?: ScaleUnit
      /** Absent: the scale does not say. */
      readonly stable?: boolean
    }
  | { readonly kind: 'overload'; readonly raw: string }
  | { readonly kind: 'noise'; readonly raw: string }

const LONGEST = 40
const STABLE: ReadonlySet<string> = new Set(['st', 's', 'stable'])
const MOVING: ReadonlySet<string> = new Set(['us', 'sd', 'd', 'm', 'mot', 'unstable'])
const OVER: ReadonlySet<string> = new Set(['ol', 'oul', 'ul', 'err', 'e', 'over', 'overload', 'h', 'l', '+', '-'])
/** What a line may say beside: which weight it is. Net and gross are both what is on the pan. */
const BESIDE: ReadonlySet<string> = new Set(['gs', 'nt', 'net', 'gross', 'n', 'qt', 'w', 'wt'])

const WEIGHT = /^([+-]?)\s*(\d{1,6}(?:[.,]\d{1,4})?|[.,]\d{1,4})\s*([a-z]{0,6})\s*([?~*]?)\s*([a-z]{0,8})$/

export function readScaleLine(text: string): ScaleLine {
  const noise: ScaleLine = { kind: 'noise', raw: text.slice(0, LONGEST) }
  if (text.length > LONGEST || /[^\t\x20-\x7e]/.test(text)) return noise
  const raw = text.trim()
  let rest = raw.toLowerCase()
  let stable: boolean | undefined
  // Words in front, set off by commas, colons or spaces: what state it is in, and which weight it sends.
  for (let word = front(rest); word !== undefined; word = front(rest)) {
    const [token, after] = word
    if (STABLE.has(token) && after !== '' && stable !== true) stable ??= true
    else if (MOVING.has(token)) stable = false
    else if (OVER.has(token)) return { kind: 'overload', raw }
    else if (!BESIDE.has(token) && !STABLE.has(token)) return noise
    rest = after
  }
  if (/^[+-]$/.test(rest)) return { kind: 'overload', raw }
  const found = WEIGHT.exec(rest)
  if (found === null) return noise
  const [, sign, digits, named, mark, behind] = found
  const unit = named === '' ? undefined : SENT_UNITS[named!]
  if (named !== '' && unit === undefined) {
    return noise
  }
  if (behind !== '' && !STABLE.has(behind!) && !MOVING.has(behind!)) return noise
  if (behind !== '') stable = stable !== false && STABLE.has(behind!)
  if (mark === '?' || mark === '~') stable = false
  const value = Number(`${sign}${digits!.replace(',', '.')}`)
  return {
    kind: 'weight',
    raw,
    value,
    digits: `${sign}${digits}`,
    ...(unit === undefined ? {} : { unit }),
    ...(stable === undefined ? {} : { stable }),
  }
}

/** The word a line begins with, and what follows it. */
function front(text: string): readonly [string, string] | undefined {
  const found = /^([a-z]+)(?:[,:;\s]+|$)(.*)$/.exec(text)
  return found === null ? undefined : [found[1]!, found[2]!.trim()]
}

/** Lines out of chunks as they come. Nothing before the first line's end is trusted: it may be the tail of a longer one. */
export function lineSplitter() {
  let held = ''
  let isWhole = false
  return (chunk: string): readonly string[] => {
    const pieces = (held + chunk).split(/[\r\n]+/)
    held = pieces.pop()!
    const lines = isWhole ? pieces : pieces.slice(1)
    if (pieces.length > 0) isWhole = true
    if (held.length > LONGEST * 4) {
      held = '' // no scale writes such a line: what follows is its tail
      isWhole = false
    }
    return lines.filter((line) => line.trim() !== '')
  }
}
