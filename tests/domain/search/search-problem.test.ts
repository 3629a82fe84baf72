import { describe, expect, it } from 'vitest'
import { findParts } from '@/domain/search/find-parts'
import { searchProblem, usualWishes } from '@/domain/search/search-problem'
import { demoSheet } from '@tests/support/demo-sheet'
import { seeded } from '@tests/support/seeded'
import { demoShelf } from './demo-shelf'
import { sheetWith, wholeArrow } from './whole-arrow'

describe('searchProblem', () => {
  it('finds arrows of which the sheet, working out the whole arrow, says the same', () => {
    let compared = 0
    for (let seed = 1; seed <= 40; seed++) {
      const roll = seeded(seed)
      const shelf = demoShelf({ roll, lots: 1 + Number(seed % 8 === 1), free: () => Math.floor(4 + 30 * roll()) })
      const targetGr = Math.round(600 + 450 * roll())
      const frontPoint = seed % 5 === 0 ? ('outsert shoulder' as const) : ('shaft front' as const)
      const sheet = demoSheet({ targetGr, frontPoint, quantity: 1 + (seed % 6) }, undefined, {
        peakDrawWeightLb: 60 + 25 * roll(),
      })
      const wishes = {
        ...usualWishes(sheet, []),
        c2cIn: { min: 28, max: 30, step: 1 },
        ...(seed % 3 === 0 ? { leastChance: 0, overGr: { min: 0, max: 50 } } : {}),
      }
      const { found, misses } = findParts(searchProblem(sheet, shelf, wishes))
      for (const { figures, parts, breaks } of [...found, ...misses]) {
        const whole = wholeArrow(
          sheetWith(sheet, shelf, { figures, parts, breaks, rank: found[0]?.rank ?? misses[0]!.rank }),
        )
        // Where a post cannot give enough the sheet trims nothing; the search trims what there is.
        if (figures.beforeGr - targetGr > figures.postGivesGr && figures.trimGr > 0) continue
        compared += 1
        const tell = `seed ${seed}, ${JSON.stringify(figures)}`
        expect(whole.beforeGr, tell).toBeCloseTo(figures.beforeGr, 8)
        expect(whole.ownSdGr, tell).toBeCloseTo(figures.ownSdGr, 8)
        expect(whole.sharedSdGr, tell).toBeCloseTo(figures.sharedSdGr, 8)
        expect(whole.postGivesGr, tell).toBeCloseTo(figures.postGivesGr, 8)
        expect(whole.chance, tell).toBeCloseTo(figures.chance, 2)
        // What the edge alone would overshoot stays on.
        const leftOn = figures.trimGr < 0.5 ? figures.trimGr : 0
        expect(Math.abs(whole.finishedGr - figures.finishedGr), tell).toBeLessThan(leftOn + 1e-8)
        expect(whole.focPercent, tell).toBeCloseTo(figures.focPercent, 8)
        expect(whole.reserve, tell).toBeCloseTo(figures.reserve!, 8)
      }
    }
    expect(compared).toBeGreaterThan(100)
  }, 120_000)
})
