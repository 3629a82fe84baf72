import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cheapestAssignment } from '@/domain/search/pairing/assignment'

/** Every assignment, by brute force. */
function least(costs: readonly (readonly number[])[], row = 0, used: readonly number[] = []): number {
  if (row === costs.length) return 0
  return costs[row]!.reduce(
    (best, cost, column) =>
      used.includes(column) ? best : Math.min(best, cost + least(costs, row + 1, [...used, column])),
    Infinity,
  )
}

describe('cheapestAssignment', () => {
  it('is the cheapest of all', () => {
    const cost = fc.oneof(
      { weight: 5, arbitrary: fc.integer({ min: -50, max: 50 }) },
      { weight: 1, arbitrary: fc.constant(Infinity) },
    )
    const table = fc
      .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 2 }))
      .chain(([n, more]) =>
        fc.array(fc.array(cost, { minLength: n + more, maxLength: n + more }), { minLength: n, maxLength: n }),
      )
    fc.assert(
      fc.property(table, (costs) => {
        const found = cheapestAssignment(costs)
        const best = least(costs)
        if (best === Infinity) expect(found).toBeUndefined()
        else {
          expect(found!.total).toBeCloseTo(best, 9)
          expect(new Set(found!.columns).size).toBe(costs.length)
        }
      }),
      { numRuns: 400 },
    )
  })

  it('has no answer for more rows than columns', () => {
    expect(cheapestAssignment([[1], [2]])).toBeUndefined()
  })
})
