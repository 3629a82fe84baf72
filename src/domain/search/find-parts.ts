/**
 * Finds, among all combinations of the shelf's parts, the best few arrows: exactly those that looking at every combination
 * would find, in the same order.
 *
 * Shaft, cut length and rear end fix the arrow's length; what lies on the shaft and what stands at the front then meet
 * only in sums. So the fronts are sorted by weight and searched from the wanted weight outwards, until the weight alone
 * says that nothing further out can come before the last of the best. The column is bounded for all arrows on a body
 * together ({@link reserveBetween}) and solved only for an arrow whose place the bounds leave open. When nothing fits, the
 * same search runs again with the limits as distances, and its answer is the nearest misses.
 */
import { type Solver, solverFor } from './column'
import type { SearchFinding } from './findings'
import { type FoundArrow, foundArrow } from './found-arrow'
import { LAST, LAST_THAT_FITS, rankBefore, type Rank } from './rank'
import { prospectsOf } from './prospects'
import { leastOf, type Prospect, type Scan, scanFronts, scanOf } from './scan'
import { settleWaiting, shortlist } from './shortlist'
import { type Space, spaceInSteps } from './space'
import { wishProblems } from './wish-problems'
import type { SearchProblem } from './wishes'

export interface SearchCounts {
  readonly combinations: number
  /** Bodies with rears, and fronts with them, that were looked at. */
  readonly visited: number
  /** Columns solved only to bound: of whole bodies, and of single arrows on a coarse mesh. */
  readonly bounded: number
  /** Columns solved to place an arrow. */
  readonly solved: number
}
export interface FoundParts {
  readonly found: readonly FoundArrow[]
  /** The nearest, when nothing fits; each names the wishes that it breaks. */
  readonly misses: readonly FoundArrow[]
  readonly counts: SearchCounts
  readonly findings: readonly SearchFinding[]
}
const NOTHING_DONE: SearchCounts = { combinations: 0, visited: 0, bounded: 0, solved: 0 }

/** How far a search has come, 0 to 1. */
export interface SearchProgress {
  readonly done: number
  readonly counts: SearchCounts
}

/** The search in small steps: after each it can be asked to stop. A step takes about a millisecond or two. */
export function* findPartsInSteps(problem: SearchProblem): Generator<SearchProgress, FoundParts> {
  const nothing = { found: [], misses: [], counts: NOTHING_DONE }
  const problems = wishProblems(problem)
  if (problems.length > 0) return { ...nothing, findings: problems }
  const laying = spaceInSteps(problem)
  let laid = laying.next()
  for (; laid.done !== true; laid = laying.next()) yield { done: 0, counts: NOTHING_DONE }
  const space = laid.value
  const findings = [...space.findings]
  if (space.bodies.length === 0 || space.rears.length === 0) {
    return { ...nothing, counts: { ...nothing.counts, combinations: space.combinations }, findings }
  }
  const judgesReserve = problem.wishes.reserve !== undefined && problem.launch !== undefined
  const solver = problem.launch === undefined ? undefined : solverFor(problem.launch)
  if (problem.wishes.reserve !== undefined && !judgesReserve) findings.push({ code: 'reserve-not-judged' })

  const strict = yield* pass(problem, space, solver, LAST_THAT_FITS, {
    ...NOTHING_DONE,
    combinations: space.combinations,
  })
  const most = problem.wishes.most
  if (strict.best.length > 0) {
    const found = strict.best.map((each) => foundArrow(problem, each, solver))
    if (found.length < most) findings.push({ code: 'fewer-than-asked', found: found.length, asked: most })
    return { found, misses: [], counts: strict.counts, findings }
  }
  const relaxed = yield* pass(problem, space, solver, LAST, strict.counts)
  const misses = relaxed.best.map((each) => foundArrow(problem, each, solver))
  findings.push(
    { code: 'nothing-fits', combinations: space.combinations, misses: misses.length },
    ...outOfReach(problem, space),
  )
  return { found: [], misses, counts: relaxed.counts, findings }
}

/** The whole search at once, for tests and the command line. */
export function findParts(problem: SearchProblem): FoundParts {
  const steps = findPartsInSteps(problem)
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
  }
}

const NEAR = 25 // tolerances off the target within which the reserve is bounded when nothing fits
const STEP = 20_000 // combinations looked at, and
const STEP_COLUMNS = 100 // columns solved, between two looks at whether to stop

function* pass(
  problem: SearchProblem,
  space: Space,
  solver: Solver | undefined,
  bar: Rank,
  before: SearchCounts,
): Generator<SearchProgress, { best: ReturnType<typeof shortlist>['best']; counts: SearchCounts }> {
  const list = shortlist(problem.wishes.most, bar)
  const { targetGr, toleranceGr } = problem.wishes
  const nearGr = bar.broken === 0 ? toleranceGr : Math.max(toleranceGr, Math.min(NEAR * toleranceGr, targetGr / 10))
  const scan = scanOf(problem, solver, list, space, nearGr)
  const bounding = { bounded: 0 }
  const counts = (): SearchCounts => ({
    combinations: before.combinations,
    visited: before.visited + scan.visited,
    bounded: before.bounded + list.bounded + bounding.bounded,
    solved: before.solved + list.solved,
  })
  let nextVisited = STEP
  let nextColumns = STEP_COLUMNS
  const pause = () => {
    const columns = list.bounded + list.solved + bounding.bounded
    if (scan.visited < nextVisited && columns < nextColumns) return false
    nextVisited = scan.visited + STEP
    nextColumns = columns + STEP_COLUMNS
    return true
  }
  const prospects: { prospect: Prospect; broken: number; distance: number }[] = []
  for (const prospect of prospectsOf(problem, space, solver, nearGr, bounding)) {
    prospects.push({ prospect, ...leastOn(scan, prospect, space) })
    if (pause()) yield { done: 0, counts: counts() }
  }
  prospects.sort(
    (a, b) =>
      a.broken - b.broken ||
      a.distance - b.distance ||
      b.prospect.body.spare - a.prospect.body.spare ||
      a.prospect.body.priceCents - b.prospect.body.priceCents ||
      a.prospect.body.index - b.prospect.body.index,
  )
  for (const [i, { prospect }] of prospects.entries()) {
    for (const rear of space.rears) {
      for (const fronts of prospect.fronts.lists) scanFronts(scan, prospect, rear, fronts)
      if (pause()) yield { done: i / prospects.length, counts: counts() }
    }
  }
  if (problem.wishes.reserve !== undefined && solver !== undefined) settleWaiting(list, problem.wishes.reserve, solver)
  return { best: list.best.toSorted((a, b) => rankBefore(a.rank, b.rank)), counts: counts() }
}

/** The least that any arrow on a body breaks and is off: the more promising bodies are searched first. */
function leastOn(scan: Scan, prospect: Prospect, { rears }: Space) {
  let broken = Infinity
  let distance = Infinity
  for (const rear of rears) {
    for (const fronts of prospect.fronts.lists) {
      const least = leastOf(scan, prospect, rear, fronts)
      broken = Math.min(broken, least.broken)
      distance = Math.min(distance, least.distance)
    }
  }
  return { broken, distance }
}

/** Why no weight could be right: every arrow is too heavy or too light before anything else is asked. */
function outOfReach({ wishes }: SearchProblem, { bodies, rears }: Space): SearchFinding[] {
  let lightestGr = Infinity
  let heaviestGr = -Infinity
  for (const { body, fronts } of bodies) {
    for (const front of fronts.all) {
      lightestGr = Math.min(lightestGr, body.weightGr + front.weightGr - front.capacityGr)
      heaviestGr = Math.max(heaviestGr, body.weightGr + front.weightGr)
    }
  }
  lightestGr += Math.min(...rears.map(({ weightGr }) => weightGr))
  heaviestGr += Math.max(...rears.map(({ weightGr }) => weightGr))
  const { targetGr, toleranceGr } = wishes
  if (lightestGr > targetGr + toleranceGr) return [{ code: 'target-below-all', targetGr, lightestGr }]
  if (heaviestGr < targetGr - toleranceGr) return [{ code: 'target-above-all', targetGr, heaviestGr }]
  return []
}
