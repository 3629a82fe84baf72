import { metresPerSecond, type Speed } from '../quantity'
import { inverseSquareLine, onLine } from './inverse-square-line'
import type { ChronographReading } from './reading'

/** A reading this many standard errors from what the others say is wild; by chance about one in 2,000 is. */
const WILD = 3.5

export interface WildReading {
  /** From 0. */
  readonly index: number
  /** What the other readings say of its arrow. */
  readonly expected: Speed
}

/**
 * The one reading that the others contradict, if there is one. From four readings on it is the one farthest, in standard
 * errors, from the line through the rest. Of three, any two make a line, so one is named only where the three together
 * are impossible and leaving out that one alone, and no other, makes sense.
 */
export function wildReading(readings: readonly ChronographReading[], speedSd: Speed): WildReading | undefined {
  const candidates = readings.flatMap((reading, index) => {
    const rest = inverseSquareLine(readings.toSpliced(index, 1), speedSd)
    if (rest === undefined || !isPossible(rest)) return []
    const expected = onLine(rest, reading.mass)
    const error = Math.hypot(expected.sd, (rest.scatter * 2 * speedSd) / reading.speed ** 3)
    const distance = Math.abs(reading.speed ** -2 - expected.value) / error
    return [{ index, distance, expected: metresPerSecond(expected.value ** -0.5) }]
  })
  if (readings.length > 3) return candidates.filter(({ distance }) => distance > WILD).sort(farthestFirst)[0]
  const all = inverseSquareLine(readings, speedSd)
  return readings.length === 3 && all && !isPossible(all) && candidates.length === 1 ? candidates[0] : undefined
}

/** Heavier arrows fly slower, and the virtual mass is not negative. */
const isPossible = (line: { readonly intercept: number; readonly slope: number }) =>
  line.slope > 0 && line.intercept >= 0

const farthestFirst = (a: { readonly distance: number }, b: { readonly distance: number }) => b.distance - a.distance
