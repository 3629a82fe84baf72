/**
 * The best so far. What is settled stands in order; what only its column can place waits, and is solved best first, so
 * that most of it never needs to be. The last of the best is the bar that everything later must come before.
 */
import type { Body } from './body'
import { reserveOf, reserveRoughly, type Solver } from './column'
import type { Front } from './front'
import { aside, breach, type Judgement } from './judge'
import { brokenSteps, couldPrecede, distanceSteps, type Rank, rankBefore } from './rank'
import type { Rear } from './rear'
import { reserveBounds } from './reserve-bounds'
import type { Wish } from './wishes'

export interface Contender extends Readonly<Judgement> {
  readonly body: Body
  readonly rear: Rear
  readonly front: Front
  /** Exact once settled; until then nothing ranks it higher. */
  rank: Rank
}

/** Spelled out: the search makes hundreds of thousands of these, and a spread costs as much as all the rest. */
export const contenderOf = (
  { beforeGr, trimGr, finishedGr, foc, broken, distance }: Readonly<Judgement>,
  body: Body,
  rear: Rear,
  front: Front,
  rank: Rank,
): Contender => ({ beforeGr, trimGr, finishedGr, foc, broken, distance, body, rear, front, rank })

export interface Shortlist {
  /** What the next must come before. */
  bar: Rank
  readonly best: Contender[]
  readonly waiting: Contender[]
  /** Columns solved on the coarse mesh, and on the fine. */
  bounded: number
  solved: number
  readonly most: number
}

const MOST_WAITING = 256

export const shortlist = (most: number, bar: Rank): Shortlist => ({
  bar,
  best: [],
  waiting: [],
  bounded: 0,
  solved: 0,
  most,
})

/** Puts a contender whose rank is exact in its place. */
export function settle(list: Shortlist, contender: Contender): void {
  const { best, most } = list
  if (rankBefore(contender.rank, list.bar) >= 0) return
  let i = best.length
  while (i > 0 && rankBefore(contender.rank, best[i - 1]!.rank) < 0) i -= 1
  best.splice(i, 0, contender)
  if (best.length > most) best.pop()
  if (best.length === most) list.bar = best[most - 1]!.rank
}

/** Keeps a contender until its column has to be solved. */
export function postpone(list: Shortlist, contender: Contender, reserve: Wish, solver: Solver): void {
  list.waiting.push(contender)
  if (list.waiting.length >= MOST_WAITING) settleWaiting(list, reserve, solver)
}

export function settleWaiting(list: Shortlist, reserve: Wish, solver: Solver): void {
  const { waiting } = list
  waiting.sort((a, b) => rankBefore(a.rank, b.rank))
  for (const contender of waiting) {
    if (!isBefore(contender.rank, list.bar)) break
    const { body, rear, front, trimGr } = contender
    const ends = reserveRoughly(solver, body, rear, front, trimGr)
    list.bounded += 1
    const bounds = reserveBounds(ends, reserve)
    const least = rankWith(contender, bounds.broken, bounds.aside)
    if (!isBefore(least, list.bar)) continue
    if (bounds.isSettled) {
      contender.rank = least
      settle(list, contender)
      continue
    }
    const found = reserveOf(solver, body, rear, front, trimGr)
    list.solved += 1
    contender.rank = rankWith(contender, breach(found, reserve), aside(found, reserve))
    settle(list, contender)
  }
  waiting.length = 0
}

const isBefore = ({ broken, distance, spare, priceCents, index }: Rank, bar: Rank) =>
  couldPrecede(broken, distance, spare, priceCents, index, bar)

/** The rank with what the reserve adds to it. */
const rankWith = ({ rank, broken, distance }: Contender, reserveBroken: number, reserveAside: number): Rank => ({
  broken: brokenSteps(broken + reserveBroken),
  distance: distanceSteps(distance + reserveAside),
  spare: rank.spare,
  priceCents: rank.priceCents,
  index: rank.index,
})
