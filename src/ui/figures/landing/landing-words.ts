/** How an arrow stands to its target, in the trade's words. */
import { difference, inUnit, magnitude } from '../../../core/quantity'
import type { Mass } from '../../../core/quantity'

export type Standing = { readonly kind: 'on the number' } | { readonly kind: 'light' | 'heavy'; readonly by: Mass }

/** @param tolerance either side of the target; what rounds to it still counts */
export function standingOf(weight: Mass, target: Mass, tolerance: Mass): Standing {
  const off = difference(weight, target)
  const rounding = 0.05 // grains: half the last digit shown
  if (Math.abs(inUnit(off, 'gr')) <= inUnit(tolerance, 'gr') + rounding) return { kind: 'on the number' }
  return { kind: off < 0 ? 'light' : 'heavy', by: magnitude(off) }
}
