import { logGamma, STIRLING_FROM, stirlingRest } from './log-gamma'

/**
 * The natural logarithm of the beta function, ln Γ(a) + ln Γ(b) − ln Γ(a + b). With one argument large the first and the
 * last nearly cancel, so their difference is taken inside Stirling's series.
 *
 * @param a above 0
 * @param b above 0
 * @throws RangeError for anything else: a caller's mistake, not a builder's
 *
 * Source: [DLMF] 5.12.1 with 5.11.1.
 */
export function logBeta(a: number, b: number): number {
  if (a < b) return logBeta(b, a)
  if (a < STIRLING_FROM) return logGamma(a) + logGamma(b) - logGamma(a + b)
  const gain = (a - 0.5) * Math.log1p(b / a) + b * Math.log(a + b) - b + stirlingRest(a + b) - stirlingRest(a)
  return logGamma(b) - gain
}
