import { logBeta } from './log-beta'
import { normalQuantile } from './normal-quantile'
import { NORMAL_FROM, studentTCdf } from './student-t-cdf'

const SETTLED = 1e-14 // of the value
const MOST_STEPS = 200
/** Shares nearer to 0 or 1 than this are not asked for. */
const LEAST_SHARE = 1e-12

/** A point below which less than p lies, doubled away from the middle until it is. */
function bracket(p: number, degrees: number): number {
  let low = -2
  while (studentTCdf(low, degrees) > p) low *= 2
  return low
}

/**
 * Student's t quantile: the t below which a share p of values lies.
 *
 * @param p from 1e-12 to 1 − 1e-12
 * @param degrees of freedom, from ½ up, need not be whole; Infinity is the normal distribution
 * @throws RangeError outside that: a caller's mistake, not a builder's
 *
 * Newton's rule inside a bracket, halving it where a step would leave it; in the lower tail, where the distribution
 * function keeps its digits. Source: start [AS64] 26.7.5, distribution function [AS64] 26.7.1.
 */
export function studentTQuantile(p: number, degrees: number): number {
  if (!(p >= LEAST_SHARE && p <= 1 - LEAST_SHARE && degrees >= 0.5)) {
    throw new RangeError(
      `studentTQuantile needs a share from 1e-12 to 1 − 1e-12 and degrees from 0.5, not ${p}, ${degrees}`,
    )
  }
  const z = normalQuantile(p)
  if (degrees > NORMAL_FROM) return z
  if (p > 0.5) return -studentTQuantile(1 - p, degrees)
  if (p === 0.5) return 0
  const logFront = -logBeta(degrees / 2, 0.5) - 0.5 * Math.log(degrees)
  const density = (t: number) => Math.exp(logFront - ((degrees + 1) / 2) * Math.log1p((t * t) / degrees))
  let low = bracket(p, degrees)
  let high = 0
  let t = Math.max(low, z + (z ** 3 + z) / (4 * degrees))
  for (let i = 0; i < MOST_STEPS; i++) {
    const off = studentTCdf(t, degrees) - p
    if (off > 0) high = t
    else low = t
    const step = off / density(t)
    const next = t - step
    const before = t
    t = next > low && next < high ? next : (low + high) / 2
    if (Math.abs(t - before) <= -SETTLED * t) break
  }
  return t
}
