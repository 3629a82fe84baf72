import type { Outcome } from '../outcome'
import { known, noAnswer, term } from '../outcome'
import type { Dimension, Quantity, UnitOf } from '../quantity'
import { difference, greatest, least, sameDimension } from '../quantity'
import { spreadOver } from './findings'
import { mean } from './mean'
import { standardDeviation } from './standard-deviation'
import { badValue } from './value-bounds'

export interface SetStatistics<D extends Dimension> {
  readonly count: number
  readonly mean: Quantity<D>
  readonly least: Quantity<D>
  readonly greatest: Quantity<D>
  /** Greatest less least. */
  readonly spread: Quantity<D>
  /** Sample standard deviation; one value has none. */
  readonly sd?: Quantity<D>
}

/**
 * Mean, spread and standard deviation of a finished set.
 *
 * @param values one for each arrow, of any one dimension
 * @param unit the unit people use for it
 * @param limit the widest spread the shop allows; a wider one is a finding
 * @returns the statistics, or `too-few-values` for an empty set, or `outside-model`
 *
 * Source: definitions; checked against [STRD].
 */
export function setStatistics<D extends Dimension>(
  values: readonly Quantity<D>[],
  unit: UnitOf<D>,
  limit?: Quantity<D>,
): Outcome<SetStatistics<D>> {
  const [first, ...rest] = values
  if (first === undefined) return noAnswer({ code: 'too-few-values', figure: 'set statistics', got: 0, needed: 1 })
  const bad = badValue(limit === undefined ? values : [...values, limit], unit)
  if (bad) return bad
  const low = least(first, ...rest)
  const high = greatest(first, ...rest)
  const spread = difference(high, low)
  const sd = rest.length === 0 ? undefined : sameDimension(first, standardDeviation(values))
  const statistics = {
    count: values.length,
    mean: sameDimension(first, mean(values)),
    least: low,
    greatest: high,
    spread,
    ...(sd === undefined ? {} : { sd }),
  }
  return known(
    statistics,
    {
      equation: 'mean = Σx/n; s = √(Σ(x − mean)²/(n − 1)); spread = greatest − least',
      inputs: values.map((value, i) => term(`value ${i + 1}`, value, unit)),
      result: [
        term('mean', statistics.mean, unit),
        term('spread', spread, unit),
        ...(sd === undefined ? [] : [term('standard deviation', sd, unit)]),
      ],
      source: ['EHANDBOOK'],
    },
    limit !== undefined && spread > limit ? [spreadOver(spread, limit, unit)] : [],
  )
}
