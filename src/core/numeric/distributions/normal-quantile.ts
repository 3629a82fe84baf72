import { normalCdf, normalDensity } from './normal-cdf'

const STEPS = 4 // Halley triples the digits at each; the start has three

/** A start good to 4.5e-4 for p up to ½, [AS64] 26.2.23. */
function start(p: number): number {
  const t = Math.sqrt(-2 * Math.log(p))
  return (2.515_517 + t * (0.802_853 + t * 0.010_328)) / (1 + t * (1.432_788 + t * (0.189_269 + t * 0.001_308))) - t
}

/**
 * The standard normal quantile: the z below which a share p of values lies.
 *
 * @param p between 0 and 1, both excluded
 * @throws RangeError outside that: a caller's mistake, not a builder's
 *
 * Source: start [AS64] 26.2.23, then Halley's rule on the distribution function.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile needs a share between 0 and 1, not ${p}`)
  if (p > 0.5) return -normalQuantile(1 - p)
  let z = start(p)
  for (let i = 0; i < STEPS; i++) {
    const off = (normalCdf(z) - p) / normalDensity(z)
    z -= off / (1 + (z * off) / 2)
  }
  return z
}
