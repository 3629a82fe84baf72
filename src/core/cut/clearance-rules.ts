import { bounds } from '../outcome'
import { inches, type Length } from '../quantity'

/** The least clearances of an arrow at full draw, and of its vanes. */
export interface ClearanceRules {
  readonly frontAheadOfRest: Length
  readonly bladesAheadOfRiser: Length
  readonly bladesOffRiser: Length
  readonly vaneOffCable: Length
  readonly vaneTail: Length
}

/** What shops commonly keep [CP]; each shop's to edit. */
export const CUSTOMARY_CLEARANCE: ClearanceRules = Object.freeze({
  frontAheadOfRest: inches(1),
  bladesAheadOfRiser: inches(0.75),
  bladesOffRiser: inches(0.25),
  vaneOffCable: inches(0.12),
  vaneTail: inches(0.8),
})

export const CLEARANCE_BOUNDS = bounds(inches(0), inches(10))
