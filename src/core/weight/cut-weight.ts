import { bounds, known, type Outcome, term } from '../outcome'
import { inches, type Length, type Mass, type Ratio, ratio, sameDimension, scaled } from '../quantity'
import { outside, refusal } from '../refusal'
import { SHAFT_LENGTH_BOUNDS } from '../runout/centre-line'
import { SPREAD_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

export const LENGTH_SD_BOUNDS = bounds(inches(0), inches(1))

/** A weight with what is unsure of it: of its own, and in common with others of its scale or its lot. */
export interface UnsureWeight {
  readonly mean: Mass
  readonly ownSd: Mass
  readonly sharedSd: Mass
}
export interface UnsureLength {
  readonly length: Length
  readonly sd: Length
}

/** How far the inches that come off may differ from the shaft's mean, one standard deviation. Common practice, no source. */
export const UNEVEN = ratio(0.01)

/**
 * What a shaft will weigh once it is cut, from its raw weight w and length r, the length c it is cut to, and what its lot
 * says of any cut shaft. The two expectations are weighed by their variances V, so that no reading makes its arrow less sure.
 *
 *   q = c/r;  by its own: q·w;  u_raw² = (q·u_w)² + (e·w·(1 − q))² + (w/r)²·(u_c² + (q·u_r)²);  V_raw = u_raw² + (q·s_w)²
 *   V_lot = u_lot² + s_lot²;  b = V_raw/(V_raw + V_lot);  mean = b·lot + (1 − b)·q·w
 *   own = √(((1 − b)·u_raw)² + b²·V_lot);  shared = (1 − b)·q·s_w
 *
 * What is left of the error of the lot's mean counts as the arrow's own; the scale's error stays shared.
 *
 * @param lot of a cut shaft; one that is known exactly stands as it is
 * @param uneven {@link UNEVEN} unless told
 * @returns the weight to expect; `outside-model`, also for a shaft shorter than it is to be cut
 *
 * Source: propagation [GUM] 5.1.2; two normal measurements of one mean weigh by their precision [BDA3] 2.5; e is [CP].
 */
export function cutWeight(
  raw: UnsureWeight & UnsureLength,
  cut: UnsureLength,
  lot: UnsureWeight,
  uneven: Ratio = UNEVEN,
): Outcome<UnsureWeight> {
  const refused = refusal([
    ...outside('raw weight', raw.mean, WEIGHT_BOUNDS, 'gr'),
    ...outside('expected cut weight', lot.mean, WEIGHT_BOUNDS, 'gr'),
    ...[raw.ownSd, raw.sharedSd, lot.ownSd, lot.sharedSd].flatMap((sd) =>
      outside('standard deviation', sd, SPREAD_BOUNDS, 'gr'),
    ),
    ...outside('raw length', raw.length, SHAFT_LENGTH_BOUNDS, 'in'),
    ...outside('cut length', cut.length, bounds(SHAFT_LENGTH_BOUNDS.min, raw.length), 'in'),
    ...[raw.sd, cut.sd].flatMap((sd) => outside('standard deviation of a length', sd, LENGTH_SD_BOUNDS, 'in')),
    ...outside('unevenness', uneven, bounds(ratio(0), ratio(1)), '%'),
  ])
  if (refused) return refused

  const share = cut.length / raw.length
  const perLength = raw.mean / raw.length // kg/m
  const byRaw = scaled(raw.mean, share)
  const ownOfRaw = Math.hypot(
    share * raw.ownSd,
    uneven * raw.mean * (1 - share),
    perLength * cut.sd,
    perLength * share * raw.sd,
  ) // kg
  const varianceOfRaw = ownOfRaw ** 2 + (share * raw.sharedSd) ** 2
  const varianceOfLot = lot.ownSd ** 2 + lot.sharedSd ** 2
  const ofLot = varianceOfLot === 0 ? 1 : varianceOfRaw / (varianceOfRaw + varianceOfLot)
  const mean = sameDimension(lot.mean, ofLot * lot.mean + (1 - ofLot) * byRaw)
  const ownSd = sameDimension(lot.mean, Math.hypot((1 - ofLot) * ownOfRaw, ofLot * Math.sqrt(varianceOfLot)))
  const sharedSd = scaled(raw.sharedSd, (1 - ofLot) * share)
  return known(
    { mean, ownSd, sharedSd },
    {
      equation:
        'q = c/r; u_raw² = (q·u_w)² + (e·w·(1 − q))² + (w/r)²·(u_c² + (q·u_r)²); V_raw = u_raw² + (q·s_w)²; V_lot = u_lot² + s_lot²; b = V_raw/(V_raw + V_lot); mean = b·lot + (1 − b)·q·w; own = √(((1 − b)·u_raw)² + b²·V_lot); shared = (1 − b)·q·s_w',
      inputs: [
        term('raw weight w', raw.mean, 'gr', 'read'),
        term('own standard deviation of the raw weight u_w', raw.ownSd, 'gr'),
        term('shared standard deviation of the raw weight s_w', raw.sharedSd, 'gr'),
        term('raw length r', raw.length, 'in'),
        term('standard deviation of the raw length u_r', raw.sd, 'in'),
        term('cut length c', cut.length, 'in'),
        term('standard deviation of the cut length u_c', cut.sd, 'in'),
        term('unevenness e', uneven, '%', 'assumed'),
        term('cut weight by the lot', lot.mean, 'gr', 'lot history'),
        term('own standard deviation by the lot u_lot', lot.ownSd, 'gr', 'lot history'),
        term('shared standard deviation by the lot s_lot', lot.sharedSd, 'gr', 'lot history'),
      ],
      result: [
        term('cut weight by its own', byRaw, 'gr'),
        term('share of the lot b', ratio(ofLot), '%'),
        term('expected cut weight', mean, 'gr'),
        term('own standard deviation', ownSd, 'gr'),
        term('shared standard deviation', sharedSd, 'gr'),
      ],
      source: ['GUM', 'BDA3', 'CP'],
      note: 'A shaft is cut from 10 in up to its raw length. What is left of the error of the lot’s mean counts as the arrow’s own.',
    },
  )
}
