const ROOT_TWO_PI = Math.sqrt(2 * Math.PI)
const SERIES_BELOW = 2.5
const FRACTION_DEPTH = 90

/** Density of the standard normal distribution. */
export const normalDensity = (z: number) => Math.exp(-0.5 * z * z) / ROOT_TWO_PI

/** ½ − Φ(−z) = φ(z)·(z + z³/3 + z⁵/15 + …), [AS64] 26.2.11. */
function centralHalf(z: number): number {
  let power = z
  let total = z
  for (let n = 3; Math.abs(power) > 1e-18; n += 2) {
    power *= (z * z) / n
    total += power
  }
  return normalDensity(z) * total
}

/** 1 − Φ(z) for z well above 0: φ(z)/(z + 1/(z + 2/(z + …))), [AS64] 26.2.14. Keeps its digits far out. */
function upperTail(z: number): number {
  let bottom = z
  for (let k = FRACTION_DEPTH; k >= 1; k--) bottom = z + k / bottom
  return normalDensity(z) / bottom
}

/**
 * The standard normal distribution function Φ(z): the chance of a value below z standard deviations.
 *
 * @param z of dimension one; ±Infinity give 1 and 0
 * @throws RangeError for NaN: a caller's mistake, not a builder's
 *
 * Source: [AS64] 26.2.11 near the middle, 26.2.14 in the tails.
 * Error: below 1e-15, and below 1e-13 of the tail itself.
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new RangeError('normalCdf needs a number')
  if (Math.abs(z) < SERIES_BELOW) return 0.5 + centralHalf(z)
  return z < 0 ? upperTail(-z) : 1 - upperTail(z)
}
