const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI)
/** From here up Stirling's series with five terms is good to the last bit. */
export const STIRLING_FROM = 12

/** What Stirling's formula leaves out: ln Γ(x) − ((x − ½)·ln x − x + ½·ln 2π), for x from {@link STIRLING_FROM}. */
export function stirlingRest(x: number): number {
  const inverse = 1 / (x * x)
  return (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse / 1188)))) / x
}

/**
 * The natural logarithm of the gamma function, by Stirling's series.
 *
 * @param x of dimension one, above 0
 * @throws RangeError for anything else: a caller's mistake, not a builder's
 *
 * Source: [AS64] 6.1.41, [DLMF] 5.11.1.
 */
export function logGamma(x: number): number {
  if (!(x > 0 && x < Infinity)) throw new RangeError(`logGamma needs a finite number above 0, not ${x}`)
  let lift = 0 // Γ(x + 1) = x·Γ(x) lifts x to where the series holds
  let y = x
  while (y < STIRLING_FROM) {
    lift += Math.log(y)
    y += 1
  }
  return (y - 0.5) * Math.log(y) - y + HALF_LOG_TWO_PI + stirlingRest(y) - lift
}
