/**
 * What a combination comes to but for its column: weight, trim, balance, chance, and how far each is from what was wished.
 * One place of truth: the search calls it in its innermost loop and the proof by brute force for every combination.
 * Plain numbers: gr, in, percent of arrow length.
 */
import { chanceForOne, chanceForSet, chanceReaches, type SetChance } from './chance-for-set'
import { type Body, wrapMoment } from './body'
import { type Front, frontMoment } from './front'
import { comesOff } from './post-trim'
import type { Rear } from './rear'
import type { SearchProblem, Wish } from './wishes'

export interface Judgement {
  /** Expected weight before anything is trimmed. */
  beforeGr: number
  trimGr: number
  finishedGr: number
  foc: number
  /** How far limits are broken, and how far it is from the aims, in tolerances; without reserve and chance. */
  broken: number
  distance: number
}
export const blankJudgement = (): Judgement => ({
  beforeGr: 0,
  trimGr: 0,
  finishedGr: 0,
  foc: 0,
  broken: 0,
  distance: 0,
})

export const CLEARANCE_STEP_IN = 0.125 // what counts as one step short of clearance [CP]
export const FRONT_LIMIT_STEP_GR = 5 // above a shaft maker's front weight [CP]
export const CHANCE_STEP = 0.05 // below the chance asked for

export const breach = (x: number, { min, max, tolerance }: Wish) =>
  x < min ? (min - x) / tolerance : x > max ? (x - max) / tolerance : 0
export const aside = (x: number, { aim, tolerance }: Wish) => (aim === undefined ? 0 : Math.abs(x - aim) / tolerance)

export function judge(problem: SearchProblem, body: Body, rear: Rear, front: Front, out: Judgement): void {
  const { wishes } = problem
  const { targetGr, toleranceGr, overGr } = wishes
  const beforeGr = body.weightGr + rear.weightGr + front.weightGr
  const excess = beforeGr - targetGr
  const trimGr = excess > 0 ? Math.min(excess, front.capacityGr) : 0
  const finishedGr = beforeGr - trimGr
  const off = Math.abs(finishedGr - targetGr)
  let broken = off > toleranceGr ? (off - toleranceGr) / toleranceGr : 0
  let distance = off / toleranceGr
  if (front.capacityGr > 0) {
    const step = overStep(overGr)
    if (trimGr < overGr.min) distance += (overGr.min - trimGr) / step
    else if (trimGr > overGr.max) distance += (trimGr - overGr.max) / step
  }

  const offGr = comesOff(front.trim, trimGr)
  const moment =
    body.momentGrIn +
    rear.momentGrIn +
    wrapMoment(body, rear.wrapGr, rear.wrapIn) +
    (front.weightGr - offGr) * body.lengthIn +
    frontMoment(front, offGr)
  const focLength = body.lengthIn + (problem.build.frontPoint === 'outsert shoulder' ? front.seatIn : 0)
  const foc = 100 * (moment / (beforeGr - offGr) / focLength - 0.5)
  if (wishes.foc !== undefined) {
    broken += breach(foc, wishes.foc)
    distance += aside(foc, wishes.foc)
  }
  if (wishes.c2cIn.aim !== undefined) distance += Math.abs(body.c2cIn - wishes.c2cIn.aim) / wishes.c2cIn.step
  if (wishes.clearance !== undefined) {
    const { frontIn, bladesIn } = wishes.clearance
    if (body.lengthIn < frontIn) broken += (frontIn - body.lengthIn) / CLEARANCE_STEP_IN
    const blades = body.lengthIn + front.bladesIn
    if (blades < bladesIn) broken += (bladesIn - blades) / CLEARANCE_STEP_IN
  }
  const limit = body.shaft.item.record.maxFrontWeightGr
  if (limit !== undefined && front.weightGr > limit) broken += (front.weightGr - limit) / FRONT_LIMIT_STEP_GR
  out.beforeGr = beforeGr
  out.trimGr = trimGr
  out.finishedGr = finishedGr
  out.foc = foc
  out.broken = broken
  out.distance = distance
}

/** One step of the planned excess: the width of its window, and never nothing. */
export const overStep = ({ min, max }: { readonly min: number; readonly max: number }) => Math.max(max - min, 0.5)

/** What the chance of the set is asked about; see {@link SetChance}. */
export const setChance = (
  { wishes }: SearchProblem,
  body: Body,
  rear: Rear,
  front: Front,
  beforeGr: number,
): SetChance => ({
  low: wishes.targetGr - wishes.toleranceGr - beforeGr,
  high: wishes.targetGr + wishes.toleranceGr + front.trim.availableGr - beforeGr,
  ownSd: Math.sqrt(body.ownVar + rear.ownVar + front.ownVar),
  sharedSd: Math.sqrt(body.sharedVar + rear.sharedVar + front.sharedVar),
  arrows: wishes.quantity,
})

/** No more than {@link chanceBreach}, and without its integral. */
export const leastChanceBreach = (set: SetChance, least: number) => Math.max(0, least - chanceForOne(set)) / CHANCE_STEP

/** How far the set's chance falls short of the one asked for, in steps. */
export function chanceBreach(set: SetChance, least: number): number {
  return chanceReaches(set, least) ? 0 : Math.max(0, least - chanceForSet(set)) / CHANCE_STEP
}
