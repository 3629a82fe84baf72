/**
 * What can be missing from a plan or impossible in it: each names what is wrong and what to change. `stop` keeps it from
 * being frozen; `look` is the builder's to judge.
 */
import type { PartKind } from '../stock/part'

export type PlanProblem = { readonly level: 'stop' | 'look' } & (
  | {
      readonly code: 'missing'
      readonly what: 'target' | 'C2C' | 'shaft' | 'nock' | 'head' | 'vanes' | 'front end' | 'glue'
    }
  | { readonly code: 'two-of'; readonly kind: PartKind }
  | { readonly code: 'below-target'; readonly byGr: number; readonly chance: number }
  | { readonly code: 'trim-beyond-post'; readonly wantedGr: number; readonly availableGr: number }
  | { readonly code: 'nothing-to-trim'; readonly overGr: number }
  | { readonly code: 'under-gpp'; readonly gpp: number; readonly least: number }
  | { readonly code: 'post-wider-than-bore'; readonly part: string; readonly postMm: number; readonly boreMm: number }
  | {
      readonly code: 'ring-tighter-than-shaft'
      readonly part: string
      readonly innerMm: number
      readonly shaftMm: number
    }
  | { readonly code: 'parts-overlap'; readonly part: string; readonly other: string; readonly byIn: number }
  | { readonly code: 'thread-differs'; readonly head: string; readonly headThread: string; readonly seatThread: string }
  | { readonly code: 'bevel-against-fletch'; readonly bevel: 'right' | 'left'; readonly side: 'right' | 'left' }
  | { readonly code: 'cut-longer-than-raw'; readonly c2cIn: number; readonly rawIn: number }
  | { readonly code: 'bond-too-short'; readonly part: string; readonly bondMm: number; readonly leastMm: number }
  | { readonly code: 'vanes-beyond-clamp'; readonly reachIn: number; readonly clampIn: number }
  | { readonly code: 'pin-without-bushing'; readonly nock: string }
  | { readonly code: 'bushing-without-pin'; readonly nock: string; readonly bushing: string }
  | { readonly code: 'vane-behind-shaft'; readonly tailIn: number; readonly rearIn: number }
  | { readonly code: 'maker-draw-limit'; readonly drawLb: number; readonly limitLb: number }
  | { readonly code: 'maker-front-limit'; readonly frontGr: number; readonly limitGr: number }
  | { readonly code: 'no-length-fits'; readonly shortestIn: number; readonly longestIn: number }
  | {
      readonly code: 'cut-too-short'
      readonly c2cIn: number
      readonly shortestIn: number
      readonly isEstimated: boolean
    }
)
