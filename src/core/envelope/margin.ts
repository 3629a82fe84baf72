import type { Bounds } from '../outcome'

/** How far an arrow is inside one limit, in that limit's own measure: 0 is on it, below 0 is outside. */
export interface Margin<L extends string = string> {
  readonly limit: L
  readonly margin: number
}

/** Both sides of a band as margins, each under its own name. */
export const bandMargins = <Q extends number, L extends string>(
  value: Q,
  band: Bounds<Q>,
  below: L,
  above: L,
): readonly Margin<L>[] => [
  { limit: below, margin: value - band.min },
  { limit: above, margin: band.max - value },
]
