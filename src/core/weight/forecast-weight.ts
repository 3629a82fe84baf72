import { studentTQuantile } from '../numeric/distributions/student-t-quantile'
import { difference, grains, inQuadrature, type Mass, ratio, sameDimension, scaled, sum } from '../quantity'
import { type Estimate, known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import type { ForecastItem } from './forecast-item'
import { DEGREES_BOUNDS, SPREAD_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

/** A cause that moves several arrows at once, and by how much it may move this one. */
export interface SharedError {
  readonly key: string
  readonly sd: Mass
}

export interface Forecast {
  /** The weight with its 95 % band. */
  readonly total: Estimate<Mass>
  /** Standard deviation of what is this arrow's own. */
  readonly ownSd: Mass
  /** Standard deviation of what it shares with others. */
  readonly sharedSd: Mass
  readonly sharedBy: readonly SharedError[]
  /** How much of the weight was read, and how much is still expected. */
  readonly read: Mass
  readonly expected: Mass
  /** Effective degrees of freedom of the band; none when every spread is known. */
  readonly degrees?: number
}

const square = (m: Mass) => m * m // kg²

/** Shared standard deviations of one key add linearly: the same error, once for each item. */
function sharedBy(items: readonly ForecastItem[]): SharedError[] {
  const byKey = new Map<string, Mass>()
  for (const { sharedKey, sharedSd } of items) {
    if (sharedKey !== undefined && sharedSd > 0) {
      byKey.set(sharedKey, sum(byKey.get(sharedKey) ?? grains(0), sharedSd))
    }
  }
  return [...byKey].map(([key, sd]) => ({ key, sd }))
}

/** Σ (variance of a lot's share)²/degrees: the lower half of the effective degrees of freedom, [GUM] G.4.1. kg⁴. */
function degreesSum(items: readonly ForecastItem[]): number {
  const learned = new Map<string, { own: number; shared: number; degrees: number }>()
  items.forEach(({ ownSd, sharedSd, sharedKey, degrees }, i) => {
    if (degrees === undefined) return
    const key = sharedKey ?? `item ${i}`
    const before = learned.get(key) ?? { own: 0, shared: 0, degrees }
    learned.set(key, {
      own: before.own + square(ownSd),
      shared: before.shared + sharedSd,
      degrees: Math.min(before.degrees, degrees),
    })
  })
  return [...learned.values()].reduce(
    (total, { own, shared, degrees }) => total + (own + shared ** 2) ** 2 / degrees,
    0,
  )
}

/** What is wrong with the items of a forecast, every fault by name. */
export const itemProblems = (items: readonly ForecastItem[]) =>
  items.flatMap(({ name, mean, ownSd, sharedSd, degrees }) => [
    ...outside(name, mean, WEIGHT_BOUNDS, 'gr'),
    ...outside(`own standard deviation of ${name}`, ownSd, SPREAD_BOUNDS, 'gr'),
    ...outside(`shared standard deviation of ${name}`, sharedSd, SPREAD_BOUNDS, 'gr'),
    ...(degrees === undefined ? [] : outside(`degrees of freedom of ${name}`, ratio(degrees), DEGREES_BOUNDS, '1')),
  ])

/**
 * Where a weight is heading: what was weighed counts as weighed, what was not at its expected value with its spread. Serves
 * a plan where nothing is weighed, a bench in progress, and any weighed whole in place of its parts; leave out the head,
 * and it is the weight less head.
 *
 *   weight = Σ known + Σ expected;  u² = Σ own² + Σ over causes (Σ shared)²
 *   band = weight ± t·u, t for u⁴/Σ(uₗ⁴/νₗ) degrees over the lots whose spread was learned
 *
 * @param items at least one
 * @returns the forecast, `nothing-to-forecast`, or `outside-model`
 *
 * Source: [GUM] 5.1.2, 5.2 and G.4.1. The weight is taken as normal: the sum of several parts nearly is.
 */
export function forecastWeight(items: readonly ForecastItem[]): Outcome<Forecast> {
  if (items.length === 0) return noAnswer({ code: 'nothing-to-forecast' })
  const refused = refusal(itemProblems(items))
  if (refused) return refused

  const causes = sharedBy(items)
  const loose = items.filter(({ sharedKey }) => sharedKey === undefined).map(({ sharedSd }) => sharedSd)
  const ownSd = inQuadrature(...items.map(({ ownSd }) => ownSd), ...loose)
  const sharedSd = inQuadrature(...causes.map(({ sd }) => sd))
  const sd = inQuadrature(ownSd, sharedSd)
  const lower = degreesSum(items)
  const degrees = lower > 0 ? sd ** 4 / lower : undefined
  const value = sum(...items.map(({ mean }) => mean))
  const reach = scaled(sd, studentTQuantile(0.975, degrees ?? Infinity))
  const total = { value, sd, low: difference(value, reach), high: sum(value, reach) }
  const read = sum(sameDimension(value, 0), ...items.filter(({ kind }) => kind === 'read').map(({ mean }) => mean))
  return known(
    {
      total,
      ownSd,
      sharedSd,
      sharedBy: causes,
      read,
      expected: difference(value, read),
      ...(degrees === undefined ? {} : { degrees }),
    },
    {
      equation:
        'weight = Σ known + Σ expected; u² = Σ own² + Σ over causes (Σ shared)²; band = weight ± t·u, t for u⁴/Σ(u⁴/ν) degrees',
      inputs: items.flatMap(({ name, mean, ownSd, sharedSd, origin, ref }) => [
        term(name, mean, 'gr', origin, ref),
        term(`own standard deviation of ${name}`, ownSd, 'gr', origin, ref),
        term(`shared standard deviation of ${name}`, sharedSd, 'gr', origin, ref),
      ]),
      result: [
        term('weight', value, 'gr'),
        term('standard uncertainty', sd, 'gr'),
        term('low end of the band', total.low, 'gr'),
        term('high end of the band', total.high, 'gr'),
      ],
      source: ['GUM'],
    },
  )
}
