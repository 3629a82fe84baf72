import { bounds } from '../outcome'
import { grains, hours, ratio } from '../quantity'

/** What any single weight may be: a part, a set of vanes, an arrow, a tray of parts. */
export const WEIGHT_BOUNDS = bounds(grains(0), grains(100_000))
/** What a standard deviation of a weight may be; 0 is known exactly. */
export const SPREAD_BOUNDS = bounds(grains(0), grains(10_000))
/** A catalogue's ± must say something. */
export const TOLERANCE_BOUNDS = bounds(grains(0.001), grains(10_000))
/** What one step of a display may be. */
export const STEP_BOUNDS = bounds(grains(0.000_1), grains(100))
/** Pieces weighed together. */
export const PIECES_BOUNDS = bounds(ratio(1), ratio(10_000))
export const DEGREES_BOUNDS = bounds(ratio(1), ratio(1e12))
export const SINCE_CHECK_BOUNDS = bounds(hours(0), hours(10_000))
