import { bounds, type Estimate } from '../outcome'
import { type Ratio, difference, ratio, scaled } from '../quantity'

/** Published for arrows: 1.3 in laminar flow [MIYAZAKI20], 1.56 and 2.05 with vanes [ORTIZ20], 2.6 turbulent [MIYAZAKI20]. */
export const PUBLISHED_DRAG = bounds(ratio(1.3), ratio(2.6))

/** A drag coefficient of which only two ends are known, each value between them as likely as any other [TN1297]. */
export const dragBetween = (low: Ratio, high: Ratio): Estimate<Ratio> => ({
  value: ratio((low + high) / 2),
  sd: scaled(difference(high, low), 1 / Math.sqrt(12)),
  low,
  high,
})

/** Where nothing is measured, 2.0 to 2.6: an arrow with vanes in turbulent flow. For broadheads nothing is published. */
export const DRAG_BAND = dragBetween(ratio(2), ratio(2.6))
