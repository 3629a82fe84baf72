import { describe, expect, it } from 'vitest'
import { type Front, frontMoment, frontPieces, momentEnds } from '@/domain/search/front'
import { momentOf } from '@/domain/search/piece-at'
import { comesOff } from '@/domain/search/post-trim'
import { spaceOf } from '@/domain/search/space'
import { sweep } from '@tests/support/sweep'
import { dice, problemOf, shelf } from './shelf-of-stock'

const fronts: readonly Front[] = spaceOf(
  problemOf(
    shelf(dice(7), { shafts: 1, inserts: 5, collars: 2, heads: 4, nocks: 1, vanes: 1, wraps: 0, rearWeights: 3 }),
  ),
).bodies[0]!.fronts.all

describe('frontMoment', () => {
  it('is the moment of the pieces, whatever is trimmed', () => {
    expect(fronts.some(({ rearWeights }) => rearWeights?.count === 2)).toBe(true)
    for (const front of fronts) {
      for (const trim of sweep(0, front.capacityGr)) {
        const off = comesOff(front.trim, trim)
        expect(frontMoment(front, off)).toBeCloseTo(momentOf(frontPieces(front, trim)), 8)
      }
    }
  })

  it('lies between its ends', () => {
    for (const front of fronts) {
      const [least, most] = momentEnds(front)
      for (const trim of sweep(0, front.capacityGr)) {
        const moment = frontMoment(front, comesOff(front.trim, trim))
        expect(moment).toBeGreaterThanOrEqual(least - 1e-9)
        expect(moment).toBeLessThanOrEqual(most + 1e-9)
      }
    }
  })

  it('goes with a weight that is less by what came off', () => {
    for (const front of fronts) {
      const trim = front.capacityGr / 2
      const left = frontPieces(front, trim).reduce((sum, { gr }) => sum + gr, 0)
      expect(left).toBeCloseTo(front.weightGr - comesOff(front.trim, trim), 8)
    }
  })
})
