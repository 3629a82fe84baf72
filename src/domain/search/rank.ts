/**
 * The order of the arrows found. First how far limits are broken, then how far the figures are from what was wished, both
 * summed in tolerances and told to a hundredth of one, so that no difference is made where there is none; then the
 * arrow that leaves stock for more like it; then the cheaper; last the order of the shelf, so that the answer is always
 * the same.
 */
export interface Rank {
  /** Hundredths of a tolerance, whole numbers. */
  readonly broken: number
  readonly distance: number
  readonly spare: number
  readonly priceCents: number
  /** Number of the combination, counted through the axes in order. */
  readonly index: number
}

const STEPS = 100 // a tolerance
const ROUNDING = 1e-6 // steps: what sums of floating point numbers may be off by

/** Nothing broken is exactly 0, anything broken at least 1. */
export const brokenSteps = (tolerances: number) => Math.max(0, Math.ceil(tolerances * STEPS - ROUNDING))
export const distanceSteps = (tolerances: number) => Math.round(tolerances * STEPS)
/** No more than the steps of any sum that differs from this one by rounding only. */
export const leastBrokenSteps = (tolerances: number) => Math.max(0, Math.ceil(tolerances * STEPS - 2 * ROUNDING))
export const leastDistanceSteps = (tolerances: number) => Math.round(tolerances * STEPS - ROUNDING)

export const rankBefore = (a: Rank, b: Rank): number =>
  a.broken - b.broken ||
  a.distance - b.distance ||
  b.spare - a.spare ||
  a.priceCents - b.priceCents ||
  a.index - b.index

/** Whether a combination of these bounds can still stand before `last`. */
export const couldPrecede = (
  broken: number,
  distance: number,
  spare: number,
  priceCents: number,
  index: number,
  last: Rank,
): boolean => {
  if (broken !== last.broken) return broken < last.broken
  if (distance !== last.distance) return distance < last.distance
  if (spare !== last.spare) return spare > last.spare
  if (priceCents !== last.priceCents) return priceCents < last.priceCents
  return index < last.index
}

/** Before which everything stands. */
export const LAST: Rank = {
  broken: Infinity,
  distance: Infinity,
  spare: -Infinity,
  priceCents: Infinity,
  index: Infinity,
}
/** Before which every arrow stands that breaks nothing. */
export const LAST_THAT_FITS: Rank = { ...LAST, broken: 0 }
