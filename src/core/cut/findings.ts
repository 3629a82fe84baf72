import type { Length } from '../quantity'

/** What stands along the arrow at full draw. */
export type Landmark = 'rest' | 'riser front' | 'hand'
/** A clearance at full draw or behind it. */
export type ClearanceName =
  | 'shaft front ahead of the rest'
  | 'blades ahead of the riser'
  | 'blades ahead of the hand'
  | 'blades off the riser'
  | 'vane off the cable'
  | 'vane tail ahead of the throat'

/** What the models of the cut have to say. */
export type CutFinding =
  | { readonly code: 'full-draw-not-known'; readonly missing: readonly Landmark[] }
  | { readonly code: 'full-draw-estimated'; readonly what: Landmark; readonly at: Length }
  | {
      readonly code: 'mark-against-draw-length'
      readonly what: Landmark
      readonly marked: Length
      readonly estimated: Length
    }
  | { readonly code: 'clearance-short'; readonly what: ClearanceName; readonly has: Length; readonly needs: Length }
  /** Nothing fits: what clearance asks for at least, what stiffness or the raw shaft allows at most. */
  | { readonly code: 'clearance-against-stiffness'; readonly clear: Length; readonly longest: Length }
  | { readonly code: 'clearance-against-raw-shaft'; readonly clear: Length; readonly longest: Length }
  | { readonly code: 'stiffness-against-raw-shaft'; readonly shortest: Length; readonly longest: Length }
  | { readonly code: 'cut-wish-moved'; readonly wish: Length; readonly c2c: Length }
  | { readonly code: 'raw-shaft-too-short'; readonly raw: Length; readonly c2c: Length }
  | { readonly code: 'too-little-to-cut'; readonly spare: Length; readonly least: Length }
  | { readonly code: 'cut-from-one-end'; readonly least: Length }
  | { readonly code: 'cut-moved-along'; readonly wished: Length; readonly offNock: Length; readonly least: Length }
