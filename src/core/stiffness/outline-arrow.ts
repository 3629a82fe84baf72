import type { Arrow } from '../arrow/arrow'
import { type FlexuralRigidity, kilograms, type Length, type LinearDensity, type Mass, metres } from '../quantity'

export interface Outline {
  /** Throat to shaft front; the shaft is taken to reach all the way. */
  readonly length: Length
  readonly rigidity: FlexuralRigidity
  readonly shaftWeightPerLength: LinearDensity
  /** Insert, head and all else in front, taken at the shaft front. */
  readonly frontMass: Mass
  /** Nock and vanes, taken at the throat. */
  readonly rearMass: Mass
}

/** The arrow in outline, when little is known yet: an even shaft with a weight at either end. */
export const outlineArrow = ({ length, rigidity, shaftWeightPerLength, frontMass, rearMass }: Outline): Arrow => ({
  length,
  shaft: { mass: kilograms(shaftWeightPerLength * length), rear: metres(0), rigidity },
  pieces: [
    { name: 'rear', mass: rearMass, from: metres(0), to: metres(0) },
    { name: 'front', mass: frontMass, from: length, to: length },
  ],
})
