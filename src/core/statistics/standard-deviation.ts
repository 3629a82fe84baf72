import { mean } from './mean'

/**
 * The sample standard deviation, n − 1 below. Plain numbers: it has the unit of the values. Two passes, and what the
 * mean's own rounding leaves in the deviations is taken off, so that values with many digits in common keep theirs.
 *
 * @param values at least two, all finite
 * @throws RangeError for fewer: a caller's mistake, not a builder's
 *
 * Error: against [STRD] at least nine digits on the hardest set, fourteen on the ordinary ones.
 */
export function standardDeviation(values: readonly number[]): number {
  if (values.length < 2) throw new RangeError('standardDeviation needs at least two values')
  const centre = mean(values)
  const deviations = values.map((value) => value - centre)
  const left = mean(deviations)
  const square = mean(deviations.map((deviation) => (deviation - left) ** 2))
  return Math.sqrt((square * values.length) / (values.length - 1))
}
