/**
 * Brute force: every combination is judged, its column solved whenever its own limits do not already say no, and all are
 * put in order. It shares with the search what a combination comes to and how ranks are ordered, and nothing of how to
 * leave combinations out.
 */
import { solverFor, reserveOf } from '@/domain/search/column'
import { aside, blankJudgement, breach, chanceBreach, judge, setChance } from '@/domain/search/judge'
import { brokenSteps, distanceSteps, type Rank, rankBefore } from '@/domain/search/rank'
import { spaceOf } from '@/domain/search/space'
import type { SearchProblem } from '@/domain/search/wishes'

/** The best ranks, and whether they break nothing. */
export function everyCombination(problem: SearchProblem): { readonly fits: Rank[]; readonly misses: Rank[] } {
  const { wishes, launch } = problem
  const { leastChance, most } = wishes
  const reserve = launch === undefined ? undefined : wishes.reserve
  const solver = launch === undefined ? undefined : solverFor(launch)
  const space = spaceOf(problem)
  const judged = blankJudgement()
  const ranksOf = (strict: boolean) => {
    const ranks: Rank[] = []
    for (const { body, fronts } of space.bodies) {
      for (const rear of space.rears) {
        for (const front of fronts.all) {
          judge(problem, body, rear, front, judged)
          let { broken, distance } = judged
          if (strict && brokenSteps(broken) > 0) continue
          if (leastChance !== undefined)
            broken += chanceBreach(setChance(problem, body, rear, front, judged.beforeGr), leastChance)
          if (strict && brokenSteps(broken) > 0) continue
          if (reserve !== undefined && solver !== undefined) {
            const found = reserveOf(solver, body, rear, front, judged.trimGr)
            broken += breach(found, reserve)
            distance += aside(found, reserve)
          }
          if (strict && brokenSteps(broken) > 0) continue
          ranks.push({
            broken: brokenSteps(broken),
            distance: distanceSteps(distance),
            spare: Math.min(body.spare, rear.spare, front.spare),
            priceCents: body.priceCents + rear.priceCents + front.priceCents,
            index: (body.index * space.rears.length + rear.index) * space.frontCount + front.index,
          })
        }
      }
    }
    return ranks.sort(rankBefore).slice(0, most)
  }
  const fits = ranksOf(true)
  return { fits, misses: fits.length > 0 ? [] : ranksOf(false) }
}
