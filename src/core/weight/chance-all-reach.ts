import { adaptiveIntegral } from '../numeric/adaptive-integral'
import { normalDensity } from '../numeric/distributions/normal-cdf'
import { latticeMean } from '../numeric/lattice-mean'
import { type Ratio, ratio } from '../quantity'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { refusal } from '../refusal'
import { forecastProblems } from './forecast-problems'
import type { Forecast } from './forecast-weight'
import { chanceBetween, type Landing, landingProblems, reachable } from './landing'
import { sharedDirections } from './shared-directions'

export interface ArrowAndLanding {
  readonly forecast: Forecast
  readonly landing: Landing
}

export interface AllReach {
  /** The chance that every arrow can be brought to its target. */
  readonly joint: Ratio
  /** What it would be if nothing were shared; lower, and wrong, when much is. For the working. */
  readonly product: Ratio
}

const FURTHEST = 8.5 // standard deviations; beyond lies less than 1e-16
const TOLERANCE = 1e-10
const EDGE = [-4, -1, 0, 1, 4] // own standard deviations about an edge: where the integrand bends

/** Arrows alike in all of this, in plain kilograms: range, mean, own standard deviation, and what each direction gives. */
interface Alike {
  readonly from: number
  readonly to: number
  readonly mean: number
  readonly own: number
  readonly shared: readonly number[]
  count: number
}

/** A planned set is one arrow several times over: each kind is then worked out once. */
function alike(arrows: readonly ArrowAndLanding[], directions: readonly (readonly number[])[]): readonly Alike[] {
  const kinds = new Map<string, Alike>()
  arrows.forEach(({ forecast, landing }, i) => {
    const { from, to } = reachable(landing)
    const shared = directions.map((direction) => direction[i]!)
    const kind = { from, to, mean: forecast.total.value, own: forecast.ownSd, shared }
    const key = Object.values(kind).join()
    const same = kinds.get(key)
    if (same === undefined) kinds.set(key, { ...kind, count: 1 })
    else same.count += 1
  })
  return [...kinds.values()]
}

/** Where along one shared direction the arrows pass the edges of their ranges. */
function bends(kinds: readonly Alike[]): number[] {
  const at = kinds.flatMap(({ from, to, mean, own, shared: [sd = 0] }) =>
    sd > 0 ? [from, to].flatMap((edge) => EDGE.map((k) => (edge - mean + k * own) / sd)) : [],
  )
  const inside = at.filter((z) => Math.abs(z) < FURTHEST)
  return [...new Set([-FURTHEST, ...inside, FURTHEST])].toSorted((a, b) => a - b)
}

/**
 * The chance that every arrow of a set can be brought to its target. What the arrows share (a lot's unknown mean, the
 * scale's calibration) makes them reach or miss together, so it is not the product of their chances.
 *
 *   joint = ∫ φ(z) Π P(arrow i in its range | shared error z) dz
 *
 * @param arrows at least one
 * @returns both chances, `nothing-to-forecast`, or `outside-model`
 *
 * One shared direction: adaptive quadrature to 1e-10. Two or more: a fixed lattice, good to about 0.001.
 * Source: derived here; checked against a seeded Monte Carlo.
 */
export function chanceAllReach(arrows: readonly ArrowAndLanding[]): Outcome<AllReach> {
  if (arrows.length === 0) return noAnswer({ code: 'nothing-to-forecast' })
  const refused = refusal(
    arrows.flatMap(({ forecast, landing }) => [...forecastProblems(forecast), ...landingProblems(landing)]),
  )
  if (refused) return refused
  const directions = sharedDirections(arrows.map(({ forecast }) => forecast.sharedBy))
  const kinds = alike(arrows, directions)
  const given = (z: readonly number[]) =>
    kinds.reduce((chance, { from, to, mean, own, shared, count }) => {
      const moved = shared.reduce((at, sd, d) => at + sd * z[d]!, mean)
      return chance * chanceBetween(from, to, moved, own) ** count
    }, 1)
  const joint =
    directions.length === 1
      ? adaptiveIntegral((z) => normalDensity(z) * given([z]), bends(kinds), TOLERANCE)
      : latticeMean(given, directions.length)
  const product = arrows.reduce((chance, { forecast, landing }) => {
    const { from, to } = reachable(landing)
    return chance * chanceBetween(from, to, forecast.total.value, forecast.total.sd)
  }, 1)
  const value = { joint: ratio(Math.min(1, joint)), product: ratio(product) }
  return known(value, {
    equation: 'joint = ∫ φ(z)·Π P(arrow i in its range | shared error z) dz',
    inputs: arrows.flatMap(({ forecast, landing }, i) => [
      term(`weight of arrow ${i + 1} before trim`, forecast.total.value, 'gr', 'computed'),
      term(`own standard deviation of arrow ${i + 1}`, forecast.ownSd, 'gr', 'computed'),
      term(`shared standard deviation of arrow ${i + 1}`, forecast.sharedSd, 'gr', 'computed'),
      term(`target of arrow ${i + 1}`, landing.target, 'gr'),
      term(`tolerance of arrow ${i + 1}`, landing.tolerance, 'gr'),
      term(`trimmable from arrow ${i + 1}`, landing.trimmable, 'gr'),
    ]),
    result: [term('chance for all', value.joint, '%'), term('product of the single chances', value.product, '%')],
    source: ['OWN'],
  })
}
