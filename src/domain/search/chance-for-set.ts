/**
 * The chance that a whole set of like arrows can be brought to its target, on plain numbers: the search asks it thousands
 * of times. It is `chanceAllReach` of the core for arrows that share one forecast; a test holds the two together.
 */
import { adaptiveIntegral } from '../../core/numeric/adaptive-integral'
import { normalDensity } from '../../core/numeric/distributions/normal-cdf'
import { chanceBetween } from '../../core/weight/landing'

export interface SetChance {
  /** The range of weights before trim that can be brought in, about the expected weight, gr. */
  readonly low: number
  readonly high: number
  /** Standard deviations, gr: of each arrow for itself, and of what the set shares. */
  readonly ownSd: number
  readonly sharedSd: number
  readonly arrows: number
}

const FURTHEST = 8.5 // standard deviations; beyond lies less than 1e-16
const TOLERANCE = 1e-10
const EDGE = [-4, -1, 0, 1, 4] // own standard deviations about an edge: where the integrand bends

/** Of one arrow. The set's chance lies between this to the power of the number of arrows, and this (Jensen). */
export const chanceForOne = ({ low, high, ownSd, sharedSd }: SetChance) =>
  chanceBetween(low, high, 0, Math.hypot(ownSd, sharedSd))

/** joint = ∫ φ(z)·P(in range | shared error z)ⁿ dz */
export function chanceForSet(set: SetChance): number {
  const { low, high, ownSd, sharedSd, arrows } = set
  if (high < low) return 0
  if (arrows === 1 || sharedSd === 0) return chanceForOne(set) ** arrows
  const bends = [low, high].flatMap((edge) => EDGE.map((k) => (edge + k * ownSd) / sharedSd))
  const inside = bends.filter((z) => Math.abs(z) < FURTHEST)
  const panels = [...new Set([-FURTHEST, ...inside, FURTHEST])].toSorted((a, b) => a - b)
  const given = (z: number) => normalDensity(z) * chanceBetween(low, high, z * sharedSd, ownSd) ** arrows
  return Math.min(1, adaptiveIntegral(given, panels, TOLERANCE))
}

const SURE = 4.5 // standard deviations inside both edges: 7e-6 is outside, of 144 arrows less than
const SURE_CHANCE = 0.998

/** Whether the set's chance is at least so much, without the integral where its bounds already tell. */
export function chanceReaches(set: SetChance, least: number): boolean {
  const clear = SURE * Math.hypot(set.ownSd, set.sharedSd)
  if (least <= SURE_CHANCE && set.low < -clear && set.high > clear) return true
  const one = chanceForOne(set)
  if (one < least) return false
  return one ** set.arrows >= least || chanceForSet(set) >= least
}
