import type { Bounds } from '../outcome'
import type { Length, Ratio } from '../quantity'

/** What the stiffness models have to say. */
export type StiffnessFinding =
  | { readonly code: 'part-runs-backwards'; readonly part: string; readonly from: Length; readonly to: Length }
  | { readonly code: 'shaft-has-no-length'; readonly rear: Length; readonly front: Length }
  | { readonly code: 'bore-wider-than-tube'; readonly part: string; readonly bore: Length; readonly outer: Length }
  | { readonly code: 'band-reversed'; readonly low: Ratio; readonly high: Ratio }
  | { readonly code: 'range-reversed'; readonly shortest: Length; readonly longest: Length }
  /** Outside the shop's working band: too soft for the bow, or stiffer than it needs. */
  | { readonly code: 'reserve-below-band'; readonly reserve: Ratio; readonly band: Bounds<Ratio> }
  | { readonly code: 'reserve-above-band'; readonly reserve: Ratio; readonly band: Bounds<Ratio> }
  /** Even the stiffest spine looked at is too soft, even the softest too stiff, or one end of the range lies beyond. */
  | { readonly code: 'no-spine-stiff-enough'; readonly spine: Length; readonly reserve: Ratio; readonly wanted: Ratio }
  | { readonly code: 'no-spine-soft-enough'; readonly spine: Length; readonly reserve: Ratio; readonly wanted: Ratio }
  | { readonly code: 'spine-range-cut-off'; readonly spine: Length; readonly end: 'softest' | 'stiffest' }
  /** The shaft is too soft even at the shortest length looked at, or too stiff even at the longest. */
  | {
      readonly code: 'no-length-short-enough'
      readonly length: Length
      readonly reserve: Ratio
      readonly wanted: Ratio
    }
  | { readonly code: 'no-length-long-enough'; readonly length: Length; readonly reserve: Ratio; readonly wanted: Ratio }
