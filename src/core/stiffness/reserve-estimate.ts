import type { Arrow } from '../arrow/arrow'
import type { Finding } from '../finding'
import { bounds, type Estimate, known, type Outcome, term } from '../outcome'
import {
  type Dimension,
  difference,
  type Force,
  inches,
  inQuadrature,
  type Length,
  type Mass,
  negated,
  type Quantity,
  type Ratio,
  ratio,
  scaled,
  sum,
} from '../quantity'
import { outside, refusal } from '../refusal'
import { columnReserve } from './column-reserve'
import { lengthened } from './lengthened'
import { type Launch, NOCK_FORCE_BOUNDS } from './nock-force'

/** A value and its standard uncertainty; an estimate is one. */
export type Uncertain<Q extends number> = Pick<Estimate<Q>, 'value' | 'sd'>

export interface ReserveInputs {
  readonly arrow: Arrow
  readonly peakDraw: Uncertain<Force>
  readonly virtualMass: Uncertain<Mass>
  /** Standard uncertainty of the static spine, as a share of it: 0.005 in of 0.250 is 0.02. */
  readonly spineSd: Ratio
  /** Standard uncertainty of the cut length. */
  readonly lengthSd: Length
}

/** How unsure an input may be for the band to mean something: a share of its value, a length, a mass in which R is linear. */
export const RESERVE_SD_BOUNDS = Object.freeze({
  share: bounds(ratio(0), ratio(0.5)),
  length: bounds(inches(0), inches(1)),
  virtualMass: NOCK_FORCE_BOUNDS.virtualMass,
})
const TWO_SIDED_95 = 1.959_963_984_540_054 // of the normal distribution [AS64] 26.2.23

/**
 * Column reserve with its 95 % band, from how well bow, spine and cut are known.
 *
 *   u² = Σ (½·(R(x + u_x) − R(x − u_x)))²
 *
 * @returns the estimate; the findings of {@link columnReserve} at the values or a standard uncertainty away from them;
 * `outside-model` for an uncertainty not within {@link RESERVE_SD_BOUNDS}
 *
 * Source: [GUM] 5.1.3 note 2 for the differences.
 * Error: only these four are in it, the model's own fit to an arrow's behaviour is not.
 */
export function reserveEstimate(inputs: ReserveInputs): Outcome<Estimate<Ratio>> {
  const { arrow, peakDraw, virtualMass, spineSd, lengthSd } = inputs
  const refused = refusal(uncertaintyProblems(inputs))
  if (refused) return refused
  const launch = { peakDraw: peakDraw.value, virtualMass: virtualMass.value }
  const middle = columnReserve(arrow, launch)
  if (!middle.ok) return middle
  const softened = (share: number): Arrow => ({
    ...arrow,
    shaft: { ...arrow.shaft, rigidity: scaled(arrow.shaft.rigidity, 1 / (1 + share)) },
  })
  const reserveAt = (changed: Arrow, changedLaunch: Partial<Launch> = {}) =>
    columnReserve(changed, { ...launch, ...changedLaunch })
  const ends = [
    [
      reserveAt(arrow, { peakDraw: sum(peakDraw.value, peakDraw.sd) }),
      reserveAt(arrow, { peakDraw: difference(peakDraw.value, peakDraw.sd) }),
    ],
    // The reserve is linear in the virtual mass: one side tells its slope, however little of it is known.
    [reserveAt(arrow, { virtualMass: sum(virtualMass.value, scaled(virtualMass.sd, 2)) }), middle],
    [reserveAt(softened(spineSd)), reserveAt(softened(negated(spineSd)))],
    [reserveAt(lengthened(arrow, lengthSd)), reserveAt(lengthened(arrow, negated(lengthSd)))],
  ] as const
  const shares: Ratio[] = []
  for (const [more, less] of ends) {
    if (!more.ok) return more
    if (!less.ok) return less
    shares.push(scaled(difference(more.value, less.value), 0.5))
  }
  const sd = inQuadrature(...shares)
  const value = middle.value
  const reach = scaled(sd, TWO_SIDED_95)
  const estimate = { value, sd, low: difference(value, reach), high: sum(value, reach) }
  return known(estimate, {
    equation: 'u² = Σ (½·(R(x + u_x) − R(x − u_x)))²; band ± 1.960·u',
    inputs: [
      term('peak draw weight, s.d.', peakDraw.sd, 'lbf'),
      term('virtual mass, s.d.', virtualMass.sd, 'gr'),
      term('static spine, s.d.', spineSd, '%'),
      term('cut length, s.d.', lengthSd, 'in'),
    ],
    result: [
      term('column reserve', value, '1'),
      term('s.d.', sd, '1'),
      term('low end', estimate.low, '1'),
      term('high end', estimate.high, '1'),
    ],
    source: ['GUM'],
    steps: [middle.derivation],
  })
}

function uncertaintyProblems({ peakDraw, virtualMass, spineSd, lengthSd }: ReserveInputs): readonly Finding[] {
  const { share, length, virtualMass: virtualMassSd } = RESERVE_SD_BOUNDS
  return [
    ...outside('s.d. of peak draw weight', peakDraw.sd, shareOf(peakDraw.value), 'lbf'),
    ...outside('s.d. of virtual mass', virtualMass.sd, virtualMassSd, 'gr'),
    ...outside('s.d. of static spine', spineSd, share, '%'),
    ...outside('s.d. of cut length', lengthSd, length, 'in'),
  ]
}

const shareOf = <D extends Dimension>(value: Quantity<D>) =>
  bounds(scaled(value, RESERVE_SD_BOUNDS.share.min), scaled(value, RESERVE_SD_BOUNDS.share.max))
