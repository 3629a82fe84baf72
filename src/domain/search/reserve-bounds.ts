/** What two ends of a reserve say of a wish for it, in tolerances. */
import type { Ends } from './column'
import { aside, breach } from './judge'
import type { Wish } from './wishes'

export interface ReserveBounds {
  /** The least it breaks, and the least it is off. */
  readonly broken: number
  readonly aside: number
  /** Whether that is what it breaks and is off, wherever between the ends it lies. */
  readonly isSettled: boolean
}

export function reserveBounds([low, high]: Ends, wish: Wish): ReserveBounds {
  const nearest = (to: number) => Math.min(Math.max(to, low), high)
  return {
    broken: breach(nearest(wish.min), wish),
    aside: wish.aim === undefined ? 0 : aside(nearest(wish.aim), wish),
    isSettled: wish.aim === undefined && low >= wish.min && high <= wish.max,
  }
}
