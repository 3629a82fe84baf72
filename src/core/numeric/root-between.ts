import { known, type Known, type Outcome } from '../outcome'

const MOST_STEPS = 200 // bisections alone need about 60 to the last digit; the rest is room

interface Point {
  readonly at: number
  readonly of: Known<number>
}

/**
 * Where a function that answers with outcomes crosses zero between two places, to `tolerance` on the place; its first
 * refusal otherwise. Inverse quadratic interpolation through the last three places where they lie well for it, else a
 * bisection; each step leaves the root between two of them, and comes no nearer to either than half the tolerance.
 *
 * @param at the function; f(low) and f(high) must differ in sign or one of them be zero
 *
 * Source: [CHANDRUPATLA] for when the interpolation is safe.
 */
export function rootBetween(
  f: (at: number) => Outcome<number>,
  low: number,
  high: number,
  tolerance: number,
): Outcome<number> {
  const first = f(low)
  if (!first.ok) return first
  const last = f(high)
  if (!last.ok) return last
  if (first.value === 0) return { ...first, value: low }
  let newest: Point = { at: high, of: last }
  let opposite: Point = { at: low, of: first }
  let share = 0.5
  for (let step = 0; step < MOST_STEPS && newest.of.value !== 0; step++) {
    const width = opposite.at - newest.at
    if (Math.abs(width) <= tolerance) break
    const least = tolerance / 2 / Math.abs(width)
    const at = newest.at + Math.min(Math.max(share, least), 1 - least) * width
    const next = f(at)
    if (!next.ok) return next
    const isSameSide = Math.sign(next.value) === Math.sign(newest.of.value)
    const before = isSameSide ? newest : opposite
    if (!isSameSide) opposite = newest
    newest = { at, of: next }
    share = nextShare(newest, opposite, before)
  }
  const [best] = [newest, opposite].toSorted((a, b) => Math.abs(a.of.value) - Math.abs(b.of.value)) as [Point, Point]
  return known(best.at, best.of.derivation, best.of.findings)
}

/** How far to go from the newest place towards the opposite one. */
function nextShare(newest: Point, opposite: Point, before: Point): number {
  const [x1, x2, x3] = [newest.at, opposite.at, before.at]
  const [f1, f2, f3] = [newest.of.value, opposite.of.value, before.of.value]
  const xi = (x1 - x2) / (x3 - x2)
  const phi = (f1 - f2) / (f3 - f2)
  const isSafe = phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi
  if (!isSafe) return 0.5
  return (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
}
