/**
 * What the search is measured against: nested loops over shaft, cut length, rear, and front, the sums of the outer loops
 * kept, cheap checks first, and the column solved only for what passes all of them. `lazily` also skips the column of what
 * could not come among the best anyway, which is the best such loops can do.
 */
import { reserveOf, solverFor } from '@/domain/search/column'
import { aside, blankJudgement, breach, chanceBreach, judge, setChance } from '@/domain/search/judge'
import { brokenSteps, distanceSteps, type Rank, rankBefore } from '@/domain/search/rank'
import { spaceOf } from '@/domain/search/space'
import type { SearchProblem } from '@/domain/search/wishes'

export function stagedLoops(problem: SearchProblem, lazily: boolean): readonly Rank[] {
  const { reserve, leastChance, clearance, most } = problem.wishes
  const space = spaceOf(problem)
  const solver = solverFor(problem.launch!)
  const judged = blankJudgement()
  const best: Rank[] = []
  for (const { body, fronts } of space.bodies) {
    if (clearance !== undefined && body.lengthIn < clearance.frontIn) continue
    for (const rear of space.rears) {
      for (const front of fronts.all) {
        judge(problem, body, rear, front, judged)
        if (brokenSteps(judged.broken) > 0) continue
        const spare = Math.min(body.spare, rear.spare, front.spare)
        const priceCents = body.priceCents + rear.priceCents + front.priceCents
        const index = (body.index * space.rears.length + rear.index) * space.frontCount + front.index
        const rank = { broken: 0, distance: distanceSteps(judged.distance), spare, priceCents, index }
        if (lazily && best.length === most && rankBefore(rank, best[most - 1]!) >= 0) continue
        if (
          leastChance !== undefined &&
          chanceBreach(setChance(problem, body, rear, front, judged.beforeGr), leastChance) > 0
        )
          continue
        if (reserve !== undefined) {
          const found = reserveOf(solver, body, rear, front, judged.trimGr)
          if (breach(found, reserve) > 0) continue
          rank.distance = distanceSteps(judged.distance + aside(found, reserve))
        }
        best.push(rank)
        best.sort(rankBefore)
        if (best.length > most) best.pop()
      }
    }
  }
  return best
}
