/**
 * What weight and balance say of all fronts of a list on one body and rear, before any is looked at. Inches, grains,
 * percent; broken and aside in tolerances.
 */
import { type Body, wrapMoment } from './body'
import { aside, breach } from './judge'
import type { Rear } from './rear'
import type { FrontList } from './space'
import type { SearchProblem } from './wishes'

export interface BalanceBound {
  /** The least that weight and balance together break. */
  broken: number
  /** The least that the balance is off, of arrows inside the weight's tolerance. */
  distance: number
}

const NOTHING: BalanceBound = { broken: 0, distance: 0 }

/**
 * At a finished weight of front w, with everything else B at moment S, FOC = 100·((S + w·L + m)/(B + w)/L − ½), and m, the
 * front's moment about the shaft front, lies between two ends for the whole list. Within the weight's tolerance that gives
 * FOC two ends. Beyond it a grain costs 1/tolerance and can bring FOC nearer by no more than its slope; where the grain
 * costs more than it brings, going beyond is no way out.
 */
export function balanceBound(problem: SearchProblem, body: Body, rear: Rear, list: FrontList): BalanceBound {
  const { foc, targetGr, toleranceGr } = problem.wishes
  if (foc === undefined) return NOTHING
  const standing = body.weightGr + rear.weightGr
  const moment = body.momentGrIn + rear.momentGrIn + wrapMoment(body, rear.wrapGr, rear.wrapIn)
  const lightest = targetGr - toleranceGr - standing
  const heaviest = targetGr + toleranceGr + list.mostEdgeGr - standing
  if (lightest <= 0) return NOTHING
  const length = body.lengthIn
  const seat = problem.build.frontPoint === 'outsert shoulder' ? list.mostSeatIn : 0
  const percent = (front: number, own: number, to: number) =>
    100 * ((moment + front * length + own) / (standing + front) / to - 0.5)
  const low = percent(lightest, list.leastMomentGrIn, length + seat)
  const high = percent(heaviest, list.mostMomentGrIn, length)
  const nearest = (to: number) => Math.min(Math.max(to, low), high)
  const distance = foc.aim === undefined ? 0 : aside(nearest(foc.aim), foc)
  const out = breach(nearest(foc.min), foc)
  if (out === 0) return { broken: 0, distance }
  // FOC rises with the front's weight, the slower the more of it there is.
  const steepest = high < foc.min ? heaviest : Math.max(0, list.weights[0]! - list.mostCapacityGr)
  const slope = (100 * (standing * length - moment - list.leastMomentGrIn)) / (standing + steepest) ** 2 / length
  return { broken: slope * toleranceGr <= foc.tolerance ? out : 0, distance }
}
