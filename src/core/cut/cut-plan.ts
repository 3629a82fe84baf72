import type { Finding } from '../finding'
import { bounds, known, noAnswer, type Outcome, term } from '../outcome'
import { difference, greatest, inches, least as leastOf, type Length, magnitude, scaled, sum } from '../quantity'
import { outside, refusal } from '../refusal'

export interface CutPlanQuestion {
  readonly rawLength: Length
  readonly c2c: Length
  /** Width of what the saw turns to dust. */
  readonly kerf: Length
  /** Shortest piece the saw can take off cleanly. */
  readonly leastPiece: Length
  /** Off the nock end, where run-out asks for more or less than half. */
  readonly offNock?: Length
}

export interface CutPlan {
  /** From each raw end to the new end face; the kerf lies within. 0: that end stays as the maker cut it. */
  readonly offNock: Length
  readonly offPoint: Length
  /** The piece that falls off each end. */
  readonly pieceNock: Length
  readonly piecePoint: Length
  readonly cuts: number
}

export const CUT_PLAN_BOUNDS = Object.freeze({
  rawLength: bounds(inches(10), inches(60)),
  c2c: bounds(inches(1), inches(60)),
  kerf: bounds(inches(0), inches(0.5)),
  leastPiece: bounds(inches(0), inches(2)),
  offNock: bounds(inches(0), inches(60)),
})
/** Below this nothing is cut: half of what a rule shows. */
const NOTHING = inches(0.005)
const NONE = inches(0)

/**
 * How much comes off each end of a raw shaft: the same off both, unless run-out asks otherwise or an end would be left with
 * less than the saw can take.
 *
 *   off the nock end + off the point end = raw length − carbon to carbon;   each 0, or at least kerf + least piece
 *
 * @returns the plan, with `cut-from-one-end` or `cut-moved-along` where the ends are not as wished; `raw-shaft-too-short`;
 * `too-little-to-cut`; or `outside-model`
 *
 * Source: [CP].
 */
export function cutPlan(question: CutPlanQuestion): Outcome<CutPlan> {
  const { rawLength, c2c, kerf, leastPiece } = question
  const spare = difference(rawLength, c2c)
  const wished = question.offNock ?? scaled(spare, 0.5)
  const refused = refusal([
    ...outside('raw length', rawLength, CUT_PLAN_BOUNDS.rawLength, 'in'),
    ...outside('carbon to carbon', c2c, CUT_PLAN_BOUNDS.c2c, 'in'),
    ...outside('kerf', kerf, CUT_PLAN_BOUNDS.kerf, 'in'),
    ...outside('least piece', leastPiece, CUT_PLAN_BOUNDS.leastPiece, 'in'),
    ...(question.offNock === undefined ? [] : outside('off the nock end', wished, CUT_PLAN_BOUNDS.offNock, 'in')),
  ])
  if (refused) return refused
  const least = sum(kerf, leastPiece)
  if (spare < 0 - NOTHING) return noAnswer({ code: 'raw-shaft-too-short', raw: rawLength, c2c })
  if (spare > NOTHING && spare < least) return noAnswer({ code: 'too-little-to-cut', spare, least })
  const offNock = spare > NOTHING ? nearestCut(wished, spare, least) : NONE
  const offPoint = spare > NOTHING ? difference(spare, offNock) : NONE
  const piece = (off: Length) => (off > 0 ? difference(off, kerf) : NONE)
  const plan: CutPlan = {
    offNock,
    offPoint,
    pieceNock: piece(offNock),
    piecePoint: piece(offPoint),
    cuts: [offNock, offPoint].filter((off) => off > 0).length,
  }
  const moved = magnitude(difference(offNock, wished)) > NOTHING
  const finding: Finding =
    question.offNock === undefined
      ? { code: 'cut-from-one-end', least }
      : { code: 'cut-moved-along', wished, offNock, least }
  return known(
    plan,
    {
      equation: 'off the nock end + off the point end = raw length − C2C; a piece is what comes off less the kerf',
      inputs: [
        term('raw length', rawLength, 'in'),
        term('carbon to carbon', c2c, 'in'),
        term('kerf', kerf, 'in', 'shop rule'),
        term('least piece', leastPiece, 'in', 'shop rule'),
        ...(question.offNock === undefined ? [] : [term('off the nock end, wished', wished, 'in')]),
      ],
      result: [term('off the nock end', offNock, 'in'), term('off the point end', offPoint, 'in')],
      source: ['CP'],
    },
    moved ? [finding] : [],
  )
}

/** Of what may come off the nock end (nothing, all of it, or enough to leave both ends a piece), the nearest to a wish. */
function nearestCut(wished: Length, spare: Length, least: Length): Length {
  const both = scaled(least, 2) <= spare ? [greatest(least, leastOf(difference(spare, least), wished))] : []
  return [NONE, spare, ...both].reduce((best, next) =>
    magnitude(difference(next, wished)) < magnitude(difference(best, wished)) ? next : best,
  )
}
