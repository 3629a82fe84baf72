/**
 * The arrow as every model sees it: masses on intervals of one axis. Positions run forward from the nock throat (0).
 * The shaft front (or the designated shoulder of an outsert) is at `length`, which is the L of [F1435], not the tip.
 */
import type { FlexuralRigidity, Length, Mass, Pressure } from '../quantity'

/** A post, sleeve or collar bonded to the shaft: it stiffens the shaft over its interval. */
export interface BondedTube {
  readonly outerDiameter: Length
  readonly innerDiameter: Length
  readonly youngsModulus: Pressure
}

/** One part: its mass spread evenly from `from` to `to`. from = to is a mass at a point (glue). */
export interface Piece {
  readonly name: string
  readonly mass: Mass
  readonly from: Length
  readonly to: Length
  readonly bonded?: BondedTube
}

export interface Shaft {
  readonly mass: Mass
  /** Where the bare shaft's rear end stands, ahead of the throat. */
  readonly rear: Length
  /** Flexural rigidity, the same throughout; see stiffness/static-spine. */
  readonly rigidity: FlexuralRigidity
}

export interface Arrow {
  /** Throat to shaft front, L of [F1435]. The shaft reaches from `shaft.rear` to here. */
  readonly length: Length
  readonly shaft: Shaft
  readonly pieces: readonly Piece[]
}
