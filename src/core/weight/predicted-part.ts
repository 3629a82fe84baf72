import { studentTQuantile } from '../numeric/distributions/student-t-quantile'
import { difference, magnitude, type Mass, type Ratio, ratio, sameDimension, scaled, sum } from '../quantity'
import { bounds, type Estimate, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { USUAL_OWN_SHARE } from './typical-spread'
import { PIECES_BOUNDS, TOLERANCE_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

/** What a catalogue says of a part's weight. */
export interface CatalogueWeight {
  readonly nominal: Mass
  readonly tolerance: Mass
  /** Which share of the catalogue's variance is piece to piece within a lot; {@link USUAL_OWN_SHARE} unless told. */
  readonly ownShare?: Ratio
}

/** One weighing of a lot: so many pieces together on the pan. */
export interface LotReading {
  readonly mass: Mass
  readonly pieces: number
}

/** What the next piece of a lot will weigh. */
export interface PredictedPart {
  readonly estimate: Estimate<Mass>
  /** Each piece's own part of the standard deviation. */
  readonly ownSd: Mass
  /** The part that all pieces of the lot have in common: how unsure the lot's mean is. */
  readonly sharedSd: Mass
  /** Degrees of freedom behind the standard deviation; none while only the catalogue speaks. */
  readonly degrees?: number
  /** Pieces weighed so far. */
  readonly pieces: number
}

/** Degrees follow from a count of weighings and take few values; finding the quantile is most of the work. */
const quantiles = new Map<number, number>()
function quantileOf(degrees: number): number {
  const quantile = quantiles.get(degrees) ?? studentTQuantile(0.975, degrees)
  quantiles.set(degrees, quantile)
  return quantile
}

/** The catalogue's spread counts for as much as that of this many weighings. */
export const CATALOGUE_WEIGHINGS = 3
export const OWN_SHARE_BOUNDS = bounds(ratio(0.01), ratio(0.99))

/**
 * The weight to expect of a piece that is not weighed yet: the catalogue's until some of its lot was, then ever more the
 * lot's own.
 *
 *   catalogue: variance t²/3, of it w piece to piece (s₀²) and 1 − w lot to lot, so that it counts for κ₀ = w/(1 − w)
 *   pieces in the mean and ν₀ = 3 weighings in the spread
 *   mean = (κ₀·nominal + Σx)/(κ₀ + n);  s² = (ν₀·s₀² + Σc(x/c − x̄)² + κ₀n/(κ₀ + n)·(x̄ − nominal)²)/(ν₀ + k)
 *   own = s;  shared = s/√(κ₀ + n);  band = mean ± t·√(own² + shared²) with (ν₀ + k)²/k degrees
 *
 * for k weighings x of c pieces each, n pieces in all. Nothing weighed gives the catalogue's mean and t/√3; many
 * weighings give x̄ and Student's t. The catalogue's spread is taken as known, so only the share of s² that was read has
 * degrees of freedom; bare, two readings would give a t of one degree and a band many times the catalogue's.
 *
 * @returns the prediction; a lot whose mean lies outside the catalogue's ± is the finding `lot-off-catalogue`;
 *   `outside-model`
 *
 * Source: mean and variance [BDA3] 3.3; degrees [GUM] G.4.1; ν₀ and the usual w are ours, chosen so that the bands hold
 * the next reading 95 % of the time (docs/forecast-coverage.md).
 */
export function predictedPart(catalogue: CatalogueWeight, readings: readonly LotReading[]): Outcome<PredictedPart> {
  const { nominal, tolerance, ownShare = USUAL_OWN_SHARE } = catalogue
  const refused = refusal([
    ...outside('catalogue weight', nominal, WEIGHT_BOUNDS, 'gr'),
    ...outside('catalogue tolerance', tolerance, TOLERANCE_BOUNDS, 'gr'),
    ...outside('share of the spread within a lot', ownShare, OWN_SHARE_BOUNDS, '%'),
    ...readings.flatMap(({ mass, pieces }) => [
      ...outside('reading', mass, WEIGHT_BOUNDS, 'gr'),
      ...outside('pieces weighed together', ratio(pieces), PIECES_BOUNDS, '1'),
    ]),
  ])
  if (refused) return refused

  const k = readings.length
  const n = readings.reduce((count, { pieces }) => count + pieces, 0)
  const off = readings.reduce((total, { mass, pieces }) => total + (mass - pieces * nominal), 0) / Math.max(n, 1) // x̄ − nominal, kg
  const within = readings.reduce((total, { mass, pieces }) => total + pieces * (mass / pieces - nominal - off) ** 2, 0)
  const κ0 = ownShare / (1 - ownShare)
  const prior = (CATALOGUE_WEIGHINGS * (ownShare * tolerance ** 2)) / 3
  const variance = (prior + within + ((κ0 * n) / (κ0 + n)) * off ** 2) / (CATALOGUE_WEIGHINGS + k)
  const ownSd = sameDimension(nominal, Math.sqrt(variance))
  const sharedSd = scaled(ownSd, 1 / Math.sqrt(κ0 + n))
  const sd = sameDimension(nominal, Math.hypot(ownSd, sharedSd))
  const value = sum(nominal, sameDimension(nominal, (off * n) / (κ0 + n)))
  const degrees = k === 0 ? undefined : (CATALOGUE_WEIGHINGS + k) ** 2 / k
  const reach = scaled(sd, quantileOf(degrees ?? Infinity))
  const estimate = { value, sd, low: difference(value, reach), high: sum(value, reach) }
  const lotMean = sum(nominal, sameDimension(nominal, off))
  return known(
    { estimate, ownSd, sharedSd, ...(degrees === undefined ? {} : { degrees }), pieces: n },
    {
      equation:
        'mean = (κ₀·nominal + Σx)/(κ₀ + n); s² = (ν₀·s₀² + Σc(x/c − x̄)² + κ₀n/(κ₀ + n)·(x̄ − nominal)²)/(ν₀ + k); own = s; shared = s/√(κ₀ + n); s₀² = w·t²/3; κ₀ = w/(1 − w); ν₀ = 3',
      inputs: [
        term('catalogue weight', nominal, 'gr', 'catalogue'),
        term('catalogue tolerance', tolerance, 'gr', 'catalogue'),
        term('share of the spread within a lot', ownShare, '%', 'assumed'),
        ...readings.map(({ mass, pieces }, i) => term(`weighing ${i + 1}, of ${pieces}`, mass, 'gr', 'read')),
      ],
      result: [
        term('expected weight', value, 'gr'),
        term('own standard deviation', ownSd, 'gr'),
        term('shared standard deviation', sharedSd, 'gr'),
        term('low end of the band', estimate.low, 'gr'),
        term('high end of the band', estimate.high, 'gr'),
      ],
      source: k === 0 ? ['TN1297'] : ['BDA3', 'GUM', 'OWN'],
    },
    magnitude(difference(lotMean, nominal)) > tolerance
      ? [{ code: 'lot-off-catalogue', mean: lotMean, nominal, tolerance, pieces: n }]
      : [],
  )
}
