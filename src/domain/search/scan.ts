/**
 * Looks through the fronts for one body and one rear, from the wanted weight outwards in both directions. Everything that
 * is left out is left out because a lower bound of its rank says it cannot come before the bar.
 */
import { balanceBound } from './balance-bounds'
import { type Body, wrapMoment } from './body'
import type { Solver } from './column'
import { type Front, frontMoment } from './front'
import {
  aside as asideOf,
  blankJudgement,
  breach,
  chanceBreach,
  judge,
  type Judgement,
  leastChanceBreach,
  overStep,
  setChance,
} from './judge'
import { brokenSteps, couldPrecede, distanceSteps, leastBrokenSteps, leastDistanceSteps } from './rank'
import type { Rear } from './rear'
import { contenderOf, postpone, settle, type Shortlist } from './shortlist'
import type { FrontList, Fronts, Space } from './space'
import type { SearchProblem } from './wishes'

/** A body, and what is known of every arrow on it whose finished weight is inside the tolerance. */
export interface Prospect {
  readonly body: Body
  readonly fronts: Fronts
  /** Least that any arrow on it breaks and is off, in tolerances: by its length alone, and by its reserve. */
  readonly broken: number
  readonly distance: number
  readonly reserveBroken: number
  readonly reserveAside: number
  /** The reserve of every arrow on it is in its window, and there is no better or worse within. */
  readonly reserveSettled: boolean
}

export interface Scan {
  readonly problem: SearchProblem
  readonly solver: Solver | undefined
  readonly list: Shortlist
  readonly rearCount: number
  readonly frontCount: number
  readonly judged: Judgement
  /** How far off the target, gr, the ends of the reserve hold; and what an arrow further off breaks at least. */
  readonly nearGr: number
  readonly farBroken: number
  visited: number
}

export function scanOf(
  problem: SearchProblem,
  solver: Solver | undefined,
  list: Shortlist,
  { rears, frontCount }: Space,
  nearGr: number,
): Scan {
  const { toleranceGr } = problem.wishes
  const farBroken = (nearGr - toleranceGr) / toleranceGr
  const counts = { rearCount: rears.length, frontCount, visited: 0 }
  return { problem, solver, list, judged: blankJudgement(), nearGr, farBroken, ...counts }
}

/**
 * The least that any arrow on the body breaks and is off. While the bar breaks nothing, only arrows inside the weight's
 * tolerance matter, and of those the reserve is known to lie between two ends.
 */
const leastBroken = ({ list }: Scan, { broken, reserveBroken }: Prospect) =>
  list.bar.broken === 0 ? broken + reserveBroken : broken
const leastDistance = ({ list }: Scan, { distance, reserveAside }: Prospect) =>
  list.bar.broken === 0 ? distance + reserveAside : distance

/** The least that any arrow of these on this body breaks: nearer the target its reserve counts, further off its weight. */
export function leastOf(scan: Scan, prospect: Prospect, rear: Rear, fronts: FrontList) {
  const balance = balanceBound(scan.problem, prospect.body, rear, fronts)
  const near = balance.broken + prospect.reserveBroken
  const { targetGr, toleranceGr } = scan.problem.wishes
  const standing = prospect.body.weightGr + rear.weightGr
  const heavy = standing + fronts.leastGr - targetGr - toleranceGr
  const light = targetGr - toleranceGr - standing - fronts.mostGr
  const weight = Math.max(0, heavy, light) / toleranceGr
  const broken = prospect.broken + Math.max(weight, Math.min(near, Math.max(balance.broken, scan.farBroken)))
  if (scan.list.bar.broken > 0) return { broken, distance: prospect.distance }
  return { broken: prospect.broken + near, distance: prospect.distance + prospect.reserveAside + balance.distance }
}

/** Whether any arrow of these on this body can come before the bar at all. */
function hopeless(scan: Scan, prospect: Prospect, rear: Rear, fronts: FrontList): boolean {
  const { body } = prospect
  const { bar } = scan.list
  const spare = Math.min(body.spare, rear.spare, fronts.mostSpare)
  const price = body.priceCents + rear.priceCents + fronts.leastPriceCents
  const { broken, distance } = leastOf(scan, prospect, rear, fronts)
  return !couldPrecede(leastBrokenSteps(broken), leastDistanceSteps(distance), spare, price, -1, bar)
}

export function scanFronts(scan: Scan, prospect: Prospect, rear: Rear, list: FrontList): void {
  scan.visited += 1
  if (hopeless(scan, prospect, rear, list)) return
  const { problem } = scan
  const { body } = prospect
  const { targetGr, toleranceGr, overGr, foc } = problem.wishes
  const {
    fronts,
    weights,
    capacities,
    moments,
    edges,
    constants,
    gains,
    squares,
    stacked,
    seats,
    spares,
    prices,
    mostCapacityGr,
  } = list
  const standingGr = body.weightGr + rear.weightGr
  const standingMoment = body.momentGrIn + rear.momentGrIn + wrapMoment(body, rear.wrapGr, rear.wrapIn)
  const standingSpare = Math.min(body.spare, rear.spare)
  const standingPrice = body.priceCents + rear.priceCents
  const shoulder = problem.build.frontPoint === 'outsert shoulder' ? 1 : 0
  const trimmed = mostCapacityGr > 0
  // The wanted excess over the target; without a post to trim, none.
  const from = trimmed ? overGr.min : 0
  const to = trimmed ? overGr.max : 0
  const step = overStep(overGr)
  // Grains beyond the window cost a step each way they may be spent: trimmed off, or left on.
  const heavier = trimmed ? Math.max(step, toleranceGr) : toleranceGr
  const start = firstNotBelow(weights, targetGr + from - standingGr)

  let way = 1
  for (let i = start; ; i += way) {
    if (i === weights.length) {
      way = -1
      i = start
      continue
    }
    if (i < 0) break
    const excess = standingGr + weights[i]! - targetGr
    const baseBroken = leastBroken(scan, prospect)
    const baseDistance = leastDistance(scan, prospect)
    const { bar } = scan.list
    // What the weight alone says of this front and of all further out.
    const far = way > 0 ? excess - mostCapacityGr - toleranceGr : -excess - toleranceGr
    const aside =
      way > 0 ? (excess - to) / heavier : excess >= 0 ? (from - excess) / step : from / step - excess / toleranceGr
    const farSteps = leastBrokenSteps(baseBroken + Math.max(0, far) / toleranceGr)
    const asideSteps = leastDistanceSteps(baseDistance + Math.max(0, aside))
    if (farSteps > bar.broken || (farSteps === bar.broken && asideSteps > bar.distance)) {
      if (way < 0) break
      way = -1
      i = start
      continue
    }
    scan.visited += 1
    // What weight and balance say of this one, to rounding.
    const trim = excess > 0 ? Math.min(excess, capacities[i]!) : 0
    const off = Math.abs(excess - trim)
    const known = bar.broken > 0 && off <= scan.nearGr
    let broken = baseBroken + (off > toleranceGr ? (off - toleranceGr) / toleranceGr : 0)
    let distance = baseDistance + off / toleranceGr
    if (known) {
      broken += prospect.reserveBroken
      distance += prospect.reserveAside
    }
    if (trimmed) distance += trim < from ? (from - trim) / step : trim > to ? (trim - to) / step : 0
    if (foc !== undefined) {
      const taken = trim > edges[i]! ? trim : 0
      const front = weights[i]! - taken
      let own = moments[i]!
      if (taken > 0) {
        if (stacked[i] === 1) own = frontMoment(fronts[i]!, taken)
        else own += constants[i]! + taken * (gains[i]! + squares[i]! * taken)
      }
      const moment = standingMoment + front * body.lengthIn + own
      const percent = 100 * (moment / (standingGr + front) / (body.lengthIn + shoulder * seats[i]!) - 0.5)
      broken += breach(percent, foc)
      distance += asideOf(percent, foc)
    }
    const spare = Math.min(standingSpare, spares[i]!)
    const price = standingPrice + prices[i]!
    if (couldPrecede(leastBrokenSteps(broken), leastDistanceSteps(distance), spare, price, -1, bar)) {
      visit(scan, prospect, rear, fronts[i]!)
    }
  }
}

/** Index of the first weight that is not below. */
function firstNotBelow(weights: Float64Array, weight: number): number {
  let low = 0
  let high = weights.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (weights[middle]! < weight) low = middle + 1
    else high = middle
  }
  return low
}

function visit(scan: Scan, prospect: Prospect, rear: Rear, front: Front): void {
  const { problem, judged, list } = scan
  const { body } = prospect
  judge(problem, body, rear, front, judged)
  const { targetGr, leastChance, reserve } = problem.wishes
  const known = Math.abs(judged.finishedGr - targetGr) <= scan.nearGr
  const reserveBroken = known ? prospect.reserveBroken : 0
  const distance = distanceSteps(judged.distance + (known ? prospect.reserveAside : 0))
  const spare = Math.min(body.spare, rear.spare, front.spare)
  const priceCents = body.priceCents + rear.priceCents + front.priceCents
  const index = (body.index * scan.rearCount + rear.index) * scan.frontCount + front.index
  let broken = brokenSteps(judged.broken + reserveBroken)
  if (!couldPrecede(broken, distance, spare, priceCents, index, list.bar)) return
  if (leastChance !== undefined) {
    const set = setChance(problem, body, rear, front, judged.beforeGr)
    const atLeast = leastChanceBreach(set, leastChance)
    if (
      !couldPrecede(
        leastBrokenSteps(judged.broken + atLeast + reserveBroken),
        distance,
        spare,
        priceCents,
        index,
        list.bar,
      )
    )
      return
    const short = chanceBreach(set, leastChance)
    if (short > 0) {
      judged.broken += short
      broken = brokenSteps(judged.broken + reserveBroken)
      if (!couldPrecede(broken, distance, spare, priceCents, index, list.bar)) return
    }
  }
  const contender = contenderOf(judged, body, rear, front, { broken, distance, spare, priceCents, index })
  if (reserve === undefined || scan.solver === undefined || (known && prospect.reserveSettled)) settle(list, contender)
  else postpone(list, contender, reserve, scan.solver)
}
