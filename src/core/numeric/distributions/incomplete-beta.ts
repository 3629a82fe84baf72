import { logBeta } from './log-beta'

const SETTLED = 1e-16
const MOST_STEPS = 100_000 // about √max(a, b) are needed

/**
 * The continued fraction [DLMF] 8.17.22, by Lentz's rule. Quick for x below (a + 1)/(a + b + 2), where no denominator
 * comes near 0.
 */
function fraction(x: number, a: number, b: number): number {
  let c = 1
  let d = 1 / (1 - ((a + b) * x) / (a + 1))
  let value = d
  for (let m = 1; m < MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / (1 + even * d)
    c = 1 + even / c
    value *= c * d
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / (1 + odd * d)
    c = 1 + odd / c
    value *= c * d
    if (Math.abs(c * d - 1) < SETTLED) break
  }
  return value
}

/**
 * The regularised incomplete beta function I_x(a, b).
 *
 * @param x from 0 to 1
 * @param a above 0
 * @param b above 0
 * @param y 1 − x, from a caller who knows it to more digits than the difference has
 * @throws RangeError outside that: a caller's mistake, not a builder's
 *
 * Source: [DLMF] 8.17.22 and 8.17.4 (I_x(a, b) = 1 − I_{1−x}(b, a)).
 */
export function incompleteBeta(x: number, a: number, b: number, y = 1 - x): number {
  if (!(x >= 0 && x <= 1 && a > 0 && b > 0)) {
    throw new RangeError(`incompleteBeta needs x from 0 to 1 and a, b above 0, not ${x}, ${a}, ${b}`)
  }
  if (x === 0 || y === 0) return x
  const logX = x < 0.5 ? Math.log(x) : Math.log1p(-y)
  const logY = y < 0.5 ? Math.log(y) : Math.log1p(-x)
  const front = Math.exp(a * logX + b * logY - logBeta(a, b))
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(y, b, a)) / b
}
