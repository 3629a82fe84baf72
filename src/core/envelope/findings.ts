import type { Unit } from '../quantity'

/** What the envelope has to say. */
export type EnvelopeFinding =
  /** The arrow is outside before anything changes. */
  | { readonly code: 'envelope-already-left'; readonly limits: readonly string[] }
  /** Past this change there is no figure to judge by. */
  | { readonly code: 'envelope-not-known-past'; readonly what: string; readonly change: number; readonly unit: Unit }
  | { readonly code: 'envelope-reach'; readonly what: string; readonly reach: number; readonly unit: Unit }
