import type { Estimate } from '../outcome'
import { type Dimension, type Quantity, difference, scaled, sum } from '../quantity'

/** Half the width of a 95 % band, in standard deviations of a normal distribution [EHANDBOOK]. */
export const NORMAL_95 = 1.959_963_984_540_054

/** Value and 95 % band of a quantity that errs alike on both sides. */
export function symmetricBand<D extends Dimension>(value: Quantity<D>, sd: Quantity<D>): Estimate<Quantity<D>> {
  const half = scaled(sd, NORMAL_95)
  return { value, sd, low: difference(value, half), high: sum(value, half) }
}

/**
 * Value and 95 % band of a quantity that cannot be negative and errs by a factor: value × e^(±1.96·sd/value). For a
 * small sd it is the symmetric band; for a large one it never reaches zero.
 */
export function positiveBand<D extends Dimension>(value: Quantity<D>, sd: Quantity<D>): Estimate<Quantity<D>> {
  const factor = Math.exp((NORMAL_95 * sd) / value)
  return { value, sd, low: scaled(value, 1 / factor), high: scaled(value, factor) }
}
