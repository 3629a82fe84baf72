import type { Arrow } from '../arrow/arrow'
import { type Length, type Mass, sameDimension, difference, sum } from '../quantity'
import { type Estimate, known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'
import { balancePoint } from './balance-point'
import { massPoints } from './mass-points'

/** How unsure the parts of an arrow are. */
export interface PartSpread {
  readonly shaft: Mass
  /** One for each piece, in the arrow's order. */
  readonly pieces: readonly Mass[]
  /** How unsure each part's place is. */
  readonly place: Length
}

const Z95 = 1.959_964 // normal quantile of 0.975

/**
 * The computed balance point with its 95 % band.
 *
 *   u² = Σ ((xᵢ − B)/M)²·u²(mᵢ) + Σ (mᵢ/M)²·u²(x)
 *
 * @param spread as many standard uncertainties of weight as the arrow has pieces
 * @returns the estimate, `too-few-values` when pieces and spreads differ in number, or what is wrong with the arrow
 *
 * Source: [GUM] 5.1.2, from B = Σmx/Σm.
 */
export function balanceUncertainty(arrow: Arrow, spread: PartSpread): Outcome<Estimate<Length>> {
  const balance = balancePoint(arrow)
  if (!balance.ok) return balance
  const needed = arrow.pieces.length
  if (spread.pieces.length !== needed) {
    return noAnswer({ code: 'too-few-values', figure: 'spread of the parts', got: spread.pieces.length, needed })
  }
  const sds = [spread.shaft, ...spread.pieces]
  const refused = refusal([
    ...sds.flatMap((sd) => outside('standard uncertainty of a weight', sd, BALANCE_BOUNDS.weightSd, 'gr')),
    ...outside('standard uncertainty of a place', spread.place, BALANCE_BOUNDS.placeSd, 'in'),
  ])
  if (refused) return refused
  const { mass, point } = balance.value
  const terms = massPoints(arrow).flatMap((part, i) => [
    ((part.at - point) / mass) * sds[i]!,
    (part.mass / mass) * spread.place,
  ]) // m
  const sd = sameDimension(point, Math.hypot(...terms))
  const reach = sameDimension(point, Z95 * sd)
  return known(
    { value: point, sd, low: difference(point, reach), high: sum(point, reach) },
    {
      equation: 'u² = Σ ((x − B)/M)²·u²(m) + Σ (m/M)²·u²(x)',
      inputs: [
        term('standard uncertainty of shaft', spread.shaft, 'gr'),
        ...arrow.pieces.map(({ name }, i) => term(`standard uncertainty of ${name}`, spread.pieces[i]!, 'gr')),
        term('standard uncertainty of a place', spread.place, 'in'),
      ],
      result: [term('balance point', point, 'in'), term('standard uncertainty', sd, 'in')],
      source: ['GUM'],
      steps: [balance.derivation],
    },
  )
}
