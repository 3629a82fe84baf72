import type { Angle, Length, Ratio, Speed } from '../quantity'

export type FlightFinding =
  /** The arrow never gets that far: it falls, or is slowed to nothing, before. */
  | { readonly code: 'range-beyond-flight'; readonly range: Length }
  | { readonly code: 'no-ranges' }
  /** The farther speed is not the lower one. */
  | { readonly code: 'speed-does-not-fall-with-distance'; readonly near: Speed; readonly far: Speed }
  /** Two speeds too near each other for their errors; `uncertainty` is of the drag coefficient, relative. */
  | {
      readonly code: 'distances-too-close'
      readonly apart: Length
      readonly uncertainty: Ratio
      readonly speedSd: Speed
    }
  /** A drag coefficient outside those published for arrows. */
  | { readonly code: 'drag-beyond-published'; readonly drag: Ratio; readonly low: Ratio; readonly high: Ratio }
  /** At this angle the centre of pressure stands ahead of the balance point, `margin` being negative. */
  | { readonly code: 'head-outsteers-vanes'; readonly margin: Length; readonly angle: Angle }
  /** The least margin is below the share of the arrow's length that is wanted. */
  | { readonly code: 'steering-margin-thin'; readonly margin: Length; readonly share: Ratio; readonly wanted: Ratio }
  /** Least margins with either head: the broadhead's is much smaller. */
  | { readonly code: 'broadhead-takes-steering'; readonly broadhead: Length; readonly fieldPoint: Length }
