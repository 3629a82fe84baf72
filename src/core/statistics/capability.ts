import { outsideModel } from '../finding'
import type { Outcome } from '../outcome'
import { bounds, known, noAnswer, term, within } from '../outcome'
import type { Dimension, Quantity, Ratio, UnitOf } from '../quantity'
import { difference, ratio, sameDimension, scaled, sum } from '../quantity'
import { badValue } from './value-bounds'

const Z95 = 1.959_964 // normal quantile of 0.975

export const COUNT_BOUNDS = bounds(ratio(2), ratio(1_000_000))

export interface CapabilityInput<D extends Dimension> {
  readonly mean: Quantity<D>
  readonly sd: Quantity<D>
  readonly count: number
  readonly lower: Quantity<D>
  readonly upper: Quantity<D>
  /** What is aimed at; the middle of the limits unless told. */
  readonly target?: Quantity<D>
}

export interface Capability {
  /** Width of the tolerance over six standard deviations. */
  readonly cp: Ratio
  /** The same to the nearer limit, over three. */
  readonly cpk: Ratio
  /** The same as cp, with the distance from the target counted as spread. */
  readonly cpm: Ratio
  /** Ends of the 95 % band of cpk, wide for a small set. */
  readonly cpkLow: Ratio
  readonly cpkHigh: Ratio
}

/**
 * How well a set keeps inside its tolerance. 1 means that three standard deviations just fit on the nearer side.
 *
 * @param unit the unit people use for the values
 * @returns the indices; `no-spread` when the standard deviation is 0; `outside-model` for a lower limit that is not
 *   below the upper one, a negative standard deviation, or a count below 2
 *
 * Source: [EHANDBOOK] 6.1.6.
 */
export function capability<D extends Dimension>(input: CapabilityInput<D>, unit: UnitOf<D>): Outcome<Capability> {
  const { mean, sd, count, lower, upper } = input
  const target = input.target ?? scaled(sum(lower, upper), 0.5)
  const bad = badValue([mean, sd, lower, upper, target], unit)
  if (bad) return bad
  const positive = bounds(sameDimension(sd, 0), sameDimension(sd, 1e9))
  if (!within(sd, positive)) return noAnswer(outsideModel('standard deviation', sd, positive, unit))
  if (!within(ratio(count), COUNT_BOUNDS))
    return noAnswer(outsideModel('number of values', ratio(count), COUNT_BOUNDS, '1'))
  const width = difference(upper, lower)
  if (!(width > 0)) return noAnswer(outsideModel('upper less lower limit', width, positive, unit))
  const smallest = width * 1e-9 // below this the indices mean nothing
  if (sd < smallest) return noAnswer({ code: 'no-spread', figure: 'capability' })

  const cp = width / (6 * sd)
  const cpk = Math.min(upper - mean, mean - lower) / (3 * sd)
  const cpm = width / (6 * Math.hypot(sd, mean - target))
  const half = Z95 * Math.sqrt(1 / (9 * count) + cpk ** 2 / (2 * (count - 1)))
  const value = {
    cp: ratio(cp),
    cpk: ratio(cpk),
    cpm: ratio(cpm),
    cpkLow: ratio(cpk - half),
    cpkHigh: ratio(cpk + half),
  }
  return known(value, {
    equation:
      'Cp = (U − L)/6s; Cpk = min(U − mean, mean − L)/3s; Cpm = (U − L)/6√(s² + (mean − target)²); Cpk ± 1.96·√(1/9n + Cpk²/2(n − 1))',
    inputs: [
      term('mean', mean, unit),
      term('standard deviation', sd, unit),
      term('number of values', ratio(count), '1'),
      term('lower limit', lower, unit),
      term('upper limit', upper, unit),
      term('target', target, unit),
    ],
    result: [term('Cp', value.cp, '1'), term('Cpk', value.cpk, '1'), term('Cpm', value.cpm, '1')],
    source: ['EHANDBOOK'],
    note: 'Meant for a steady process with normal spread; the band is wide for a set of six.',
  })
}
