import type { Length, Mass } from '../quantity'
import type { FixingEvent } from './fixing-events'

/** The trim would eat into the bond that must stay, or into the shoulder. */
export interface TrimIntoBond {
  readonly code: 'trim-into-bond'
  readonly wanted: Mass
  readonly available: Mass
  readonly leastBond?: Length
}

/** The arrow is lighter than its target already: nothing can be trimmed, something must be added. */
export interface LightArrow {
  readonly code: 'light-arrow'
  readonly by: Mass
}

/** Breaking the edge alone takes more than there is to take. */
export interface ChamferTakesMore {
  readonly code: 'chamfer-takes-more'
  readonly chamfer: Mass
  readonly wanted: Mass
}

/** Still heavy, but even a light pass would probably take too much. */
export interface PassTooCoarse {
  readonly code: 'pass-too-coarse'
  readonly above: Mass
}

/** Nothing on the list can still mend the arrow. */
export interface NoMend {
  readonly code: 'no-mend'
  readonly short: Mass
  readonly fixed: readonly FixingEvent[]
}

/** A change names a part that the arrow does not have. */
export interface NoSuchPart {
  readonly code: 'no-such-part'
  readonly part: string
  readonly change: string
}

export type TrimFinding = TrimIntoBond | LightArrow | ChamferTakesMore | PassTooCoarse | NoMend | NoSuchPart
