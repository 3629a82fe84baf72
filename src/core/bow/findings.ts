import type { Bounds } from '../outcome'
import type { Energy, Force, Length, Mass, Ratio, Speed } from '../quantity'

/** Where a bow's energy came from, in falling order of trust. */
export type Provenance = 'chronograph' | 'one weight' | 'force-draw curve' | 'rating'

export type BowFinding =
  /** Fewer readings, or points of a curve, than the model needs. */
  | { readonly code: 'too-few-points'; readonly of: string; readonly count: number; readonly needed: number }
  /** Readings of one arrow weight only: they cannot part the bow's energy from its virtual mass. */
  | { readonly code: 'equal-weights'; readonly mass: Mass }
  /** Arrow weights too near each other for the chronograph; `uncertainty` is of the energy, relative. */
  | {
      readonly code: 'weights-too-close'
      readonly lightest: Mass
      readonly heaviest: Mass
      readonly uncertainty: Ratio
      readonly speedSd: Speed
    }
  /** The heavier arrows are not slower, which no bow does. */
  | { readonly code: 'speed-does-not-fall-with-weight'; readonly lightest: Mass; readonly heaviest: Mass }
  | { readonly code: 'negative-virtual-mass'; readonly virtualMass: Mass; readonly sd: Mass }
  /** One reading that the others contradict; `position` counts from 1. */
  | {
      readonly code: 'wild-reading'
      readonly position: number
      readonly mass: Mass
      readonly speed: Speed
      readonly expected: Speed
    }
  /** The readings scatter `times` as much as the chronograph's error explains. */
  | { readonly code: 'readings-scatter'; readonly times: number; readonly speedSd: Speed }
  /** A speed asked for at a weight beyond those measured. */
  | { readonly code: 'extrapolated'; readonly mass: Mass; readonly measured: Bounds<Mass>; readonly sd: Speed }
  /** A point of a force-draw curve whose draw does not go on from the one before; `position` counts from 1. */
  | { readonly code: 'draw-does-not-go-on'; readonly curve: string; readonly position: number; readonly draw: Length }
  | { readonly code: 'curve-starts-with-force'; readonly force: Force; readonly peak: Force }
  | { readonly code: 'let-down-spans-another-draw'; readonly draw: Bounds<Length>; readonly letDown: Bounds<Length> }
  | { readonly code: 'let-down-above-draw'; readonly stored: Energy; readonly returned: Energy }
  /** No stroke is left between brace height and full draw. */
  | { readonly code: 'no-power-stroke'; readonly drawLength: Length; readonly braceHeight: Length }
  | { readonly code: 'rating-needs'; readonly missing: readonly ('peak draw weight' | 'draw length')[] }
  /** A source of more trust was given and could not be used. */
  | { readonly code: 'less-trusted-source'; readonly used: Provenance; readonly instead: readonly Provenance[] }
  | { readonly code: 'speed-not-known' }
