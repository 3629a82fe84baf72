/** One arrow of the answer: its parts, its figures, and which wishes it breaks and by how much. Records' units. */
import type { Id } from '../records/scalars'
import { chanceForSet } from './chance-for-set'
import { reserveOf, type Solver } from './column'
import { setChance } from './judge'
import type { Option } from './options'
import type { Rank } from './rank'
import type { Contender } from './shortlist'
import type { WishName } from './wish-names'
import type { SearchProblem, Wish } from './wishes'
import { AXIS_NAMES, type Axis } from './axes'

export interface ChosenPart {
  readonly part: Id
  readonly lot: Id | null
  readonly no?: string
  readonly count: number
}

/** A limit that is not kept: by how much, in the wish's own unit, and how many of its steps that is. */
export interface BrokenWish {
  readonly wish: WishName
  readonly at: number
  readonly limit: number
}

export interface ArrowFigures {
  /** Expected, before anything is trimmed; what comes off; what is left. */
  readonly beforeGr: number
  readonly trimGr: number
  readonly finishedGr: number
  readonly postGivesGr: number
  /** 1 s.d. of the weight before trim, own and shared. */
  readonly ownSdGr: number
  readonly sharedSdGr: number
  /** That every arrow of the set can be brought to the target. */
  readonly chance: number
  readonly c2cIn: number
  readonly lengthIn: number
  readonly focPercent: number
  /** Undefined while nothing is known of the bow. */
  readonly reserve: number | undefined
  /** Throat to the rear of the blades; undefined without blades. */
  readonly bladesIn: number | undefined
  readonly priceCents: number
  /** How many more such arrows the stock would be enough for. */
  readonly spare: number
}

export interface FoundArrow {
  readonly parts: Readonly<Partial<Record<Axis, ChosenPart>>>
  readonly figures: ArrowFigures
  readonly rank: Rank
  readonly breaks: readonly BrokenWish[]
}

export function foundArrow(problem: SearchProblem, contender: Contender, solver: Solver | undefined): FoundArrow {
  const { body, rear, front, rank, beforeGr, trimGr, finishedGr, foc } = contender
  const chance = setChance(problem, body, rear, front, beforeGr)
  const figures: ArrowFigures = {
    beforeGr,
    trimGr,
    finishedGr,
    postGivesGr: front.trim.availableGr,
    ownSdGr: chance.ownSd,
    sharedSdGr: chance.sharedSd,
    chance: chanceForSet(chance),
    c2cIn: body.c2cIn,
    lengthIn: body.lengthIn,
    focPercent: foc,
    reserve: solver === undefined ? undefined : reserveOf(solver, body, rear, front, trimGr),
    bladesIn: Number.isFinite(front.bladesIn) ? body.lengthIn + front.bladesIn : undefined,
    priceCents: rank.priceCents,
    spare: rank.spare,
  }
  return { parts: partsOf(contender), figures, rank, breaks: breaksOf(problem, contender, figures) }
}

function partsOf({ body, rear, front }: Contender): FoundArrow['parts'] {
  const options: Readonly<Record<Axis, Option | undefined>> = {
    shaft: body.shaft,
    nock: body.tail.nock,
    bushing: body.tail.bushing,
    vanes: rear.vanes,
    wrap: rear.wrap,
    front: front.front,
    ring: front.ring,
    'rear weights': front.rearWeights,
    adapter: front.adapter,
    head: front.head,
  }
  return Object.fromEntries(
    AXIS_NAMES.flatMap((axis) => {
      const option = options[axis]
      if (option === undefined) return []
      const { part, lot, no } = option.item
      return [[axis, { part, lot, count: option.count, ...(no === undefined ? {} : { no }) }]]
    }),
  )
}

function breaksOf(problem: SearchProblem, { body, front }: Contender, figures: ArrowFigures): BrokenWish[] {
  const { targetGr, toleranceGr, foc, reserve, clearance, leastChance } = problem.wishes
  const broken: BrokenWish[] = []
  const between = (wish: WishName, at: number, window: Pick<Wish, 'min' | 'max'> | undefined) => {
    if (window === undefined) return
    if (at < window.min) broken.push({ wish, at, limit: window.min })
    if (at > window.max) broken.push({ wish, at, limit: window.max })
  }
  between('finished weight', figures.finishedGr, { min: targetGr - toleranceGr, max: targetGr + toleranceGr })
  between('FOC', figures.focPercent, foc)
  if (figures.reserve !== undefined) between('reserve', figures.reserve, reserve)
  between('shaft front clear of the rest', figures.lengthIn, { min: clearance?.frontIn ?? -Infinity, max: Infinity })
  const blades = { min: clearance?.bladesIn ?? -Infinity, max: Infinity }
  if (figures.bladesIn !== undefined) between('blades clear of the riser', figures.bladesIn, blades)
  const { maxFrontWeightGr = Infinity } = body.shaft.item.record
  between('front weight limit of the shaft', front.weightGr, { min: 0, max: maxFrontWeightGr })
  between('chance for the set', figures.chance, { min: leastChance ?? 0, max: 1 })
  return broken
}
