import { incompleteBeta } from './incomplete-beta'
import { normalCdf } from './normal-cdf'

/** Above this many degrees the normal distribution is the same to more digits than a double holds. */
export const NORMAL_FROM = 1e12

/**
 * Student's t distribution function: the chance of a value below t.
 *
 *   P(T < −|t|) = ½·I_x(ν/2, ½),  x = ν/(ν + t²)
 *
 * @param t of dimension one
 * @param degrees of freedom ν, above 0, need not be whole; Infinity is the normal distribution
 * @throws RangeError outside that: a caller's mistake, not a builder's
 *
 * Source: [AS64] 26.7.1 with 26.5.
 */
export function studentTCdf(t: number, degrees: number): number {
  if (Number.isNaN(t) || !(degrees > 0)) {
    throw new RangeError(`studentTCdf needs a number and degrees above 0, not ${t}, ${degrees}`)
  }
  if (degrees > NORMAL_FROM) return normalCdf(t)
  const square = t * t
  if (square === Infinity) return t > 0 ? 1 : 0
  const all = degrees + square
  const half = 0.5 * incompleteBeta(degrees / all, degrees / 2, 0.5, square / all)
  return t > 0 ? 1 - half : half
}
