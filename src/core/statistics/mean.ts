/** The sum with the part that each addition rounds away kept and added at the end (Neumaier). */
function exactSum(values: readonly number[]): number {
  let total = 0
  let lost = 0
  for (const value of values) {
    const next = total + value
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total
    total = next
  }
  return total + lost
}

/**
 * The arithmetic mean. Plain numbers: the mean has the unit of the values.
 *
 * @param values at least one, all finite
 * @throws RangeError for an empty list: a caller's mistake, not a builder's
 */
export function mean(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('mean needs at least one value')
  return exactSum(values) / values.length
}
