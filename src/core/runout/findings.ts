import type { Length } from '../quantity'

/** What the models of run-out have to say. */
export type RunOutFinding =
  | { readonly code: 'places-not-whole'; readonly places: number }
  | { readonly code: 'no-stations' }
  | { readonly code: 'supports-too-close'; readonly rear: Length; readonly front: Length; readonly least: Length }
  | { readonly code: 'stations-coincide'; readonly at: Length; readonly least: Length }
  | { readonly code: 'window-longer-than-shaft'; readonly window: Length; readonly raw: Length }
  /** Part of the window lies beyond the outermost station or support. */
  | { readonly code: 'run-out-extrapolated'; readonly by: Length }
