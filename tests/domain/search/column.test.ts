import { describe, expect, it } from 'vitest'
import { reserveBetween, reserveOf, reserveRoughly, solverFor } from '@/domain/search/column'
import { blankJudgement, judge } from '@/domain/search/judge'
import { prospectsOf } from '@/domain/search/prospects'
import { spaceOf } from '@/domain/search/space'
import { between, dice, oneOf, problemOf, shelf } from './shelf-of-stock'

const size = { shafts: 3, inserts: 4, collars: 2, heads: 5, nocks: 2, vanes: 3, wraps: 1, rearWeights: 1 }

describe('the ends of the reserve', () => {
  it('hold every arrow on a body within the tolerance of the target, and are near each other', () => {
    let looked = 0
    let widest = 0
    for (let seed = 1; seed <= 12; seed++) {
      const roll = dice(seed)
      const toleranceGr = oneOf(roll, [0.5, 20])
      const problem = problemOf(shelf(roll, size), {
        targetGr: between(roll, 600, 950),
        toleranceGr,
        reserve: { min: 0, max: 100, tolerance: 0.05, aim: 1 },
      })
      const solver = solverFor(problem.launch!)
      const judged = blankJudgement()
      const space = spaceOf(problem)
      for (const { body, fronts, reserveAside } of prospectsOf(problem, space, solver, toleranceGr, { bounded: 0 })) {
        for (const rear of space.rears) {
          for (const front of fronts.all) {
            judge(problem, body, rear, front, judged)
            if (Math.abs(judged.finishedGr - problem.wishes.targetGr) > toleranceGr || roll() < 0.9) continue
            const reserve = reserveOf(solver, body, rear, front, judged.trimGr)
            expect(Math.abs(reserve - 1) / 0.05, `seed ${seed}`).toBeGreaterThanOrEqual(reserveAside)
            const [low, high] = reserveRoughly(solver, body, rear, front, judged.trimGr)
            expect(reserve).toBeGreaterThanOrEqual(low + 0.5 * (high - low))
            expect(reserve).toBeLessThanOrEqual(high)
            looked += 1
          }
        }
      }
      const { body } = space.bodies[0]!
      const rears = space.rears.map(({ weightGr }) => weightGr)
      const inside = space.bodies[0]!.fronts.all.map(({ insideGr }) => insideGr)
      const [low, high] = reserveBetween(solver, body, {
        lightestGr: 850,
        heaviestGr: 850,
        leastRearGr: Math.min(...rears),
        mostRearGr: Math.max(...rears),
        rearFrontIn: 5,
        mostInsideGr: Math.max(...inside),
        insideIn: 5,
        mostStiffening: 0,
      })
      expect(low).toBeLessThan(high)
      widest = Math.max(widest, high / low)
    }
    expect(looked).toBeGreaterThan(2000)
    expect(widest).toBeLessThan(1.35)
  }, 60_000)
})
