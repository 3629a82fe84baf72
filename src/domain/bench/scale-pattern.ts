/**
 * A pattern of the shop's own, for a scale whose lines are not understood as they are. It is the line as it comes, with
 * `{weight}` where the digits stand, and where they are sent `{state}`, `{unit}` and `{any}` for what may be anything. What
 * stands between is taken as it is; blanks may be more or fewer. A line that does not fit is noise.
 */
import type { ScaleLine, ScaleUnit } from './scale-line'

export interface ScalePattern {
  readonly line: string
  /** What `{state}` says once it has settled; empty where nothing stands there then. */
  readonly settled: string
  /** What `{unit}` says when it stands in grains. */
  readonly grains: string
}

export type PatternProblem = 'no weight' | 'twice' | 'too long' | 'unknown place' | 'no grains word'

const LONGEST = 60
const MOST_PLACES = 5 // more of them could be tried in too many ways
const PLACES: Readonly<Record<string, string>> = {
  weight: String.raw`([+-]?\s*\d{1,6}(?:[.,]\d{1,4})?)`,
  state: String.raw`([^\s,;:\d+-]*?)`,
  unit: String.raw`([A-Za-z]*)`,
  any: String.raw`\S*`,
}
const PLACE = /\{([a-z]*)\}/g
const named = (line: string) => [...line.matchAll(PLACE)].map(([, name]) => name!)

export function patternProblem({ line, grains }: ScalePattern): PatternProblem | undefined {
  const places = named(line)
  if (line.length > LONGEST || places.length > MOST_PLACES) return 'too long'
  if (places.some((name) => !Object.hasOwn(PLACES, name))) return 'unknown place'
  if (!places.includes('weight')) return 'no weight'
  if (['weight', 'state', 'unit'].some((name) => places.filter((each) => each === name).length > 1)) return 'twice'
  return places.includes('unit') && grains.trim() === '' ? 'no grains word' : undefined
}

const plain = (text: string) =>
  text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`).replaceAll(/\s+/g, String.raw`\s*`)

/** Reads lines by a pattern. @throws when the pattern has a problem: ask `patternProblem` first */
export function patternReader(pattern: ScalePattern): (text: string) => ScaleLine {
  if (patternProblem(pattern) !== undefined) throw new Error('a pattern with a problem reads nothing')
  const places = named(pattern.line).filter((name) => name !== 'any')
  const between = pattern.line.trim().split(/\{[a-z]*\}/)
  const all = named(pattern.line)
  const body = between.map((text, i) => plain(text) + (i < all.length ? PLACES[all[i]!] : '')).join(String.raw`\s*`)
  const whole = new RegExp(String.raw`^\s*${body}\s*$`)
  const isWord = (said: string, word: string) => said.toLowerCase() === word.trim().toLowerCase()
  return (text) => {
    const raw = text.trim().slice(0, LONGEST)
    const found = text.length > LONGEST ? null : whole.exec(text)
    if (found === null) return { kind: 'noise', raw }
    const told = new Map(places.map((name, i) => [name, found[i + 1] ?? '']))
    const digits = told.get('weight')!.replaceAll(/\s/g, '')
    const unit: ScaleUnit | undefined = places.includes('unit')
      ? isWord(told.get('unit')!, pattern.grains)
        ? 'gr'
        : 'other'
      : undefined
    return {
      kind: 'weight',
      raw,
      value: Number(digits.replace(',', '.')),
      digits,
      ...(unit === undefined ? {} : { unit }),
      ...(places.includes('state') ? { stable: isWord(told.get('state')!, pattern.settled) } : {}),
    }
  }
}
