import { describe, expect, it } from 'vitest'
import { differenceOf } from '@/domain/records/difference-of'

describe('differenceOf', () => {
  it('names each field that changed, went and came, by its path', () => {
    const before = { plan: { targetGr: 900, lines: [{ lengthIn: 28.5 }] }, note: 'old' }
    const after = { plan: { targetGr: 905, lines: [{ lengthIn: 28.5 }, { lengthIn: 2 }] } }
    const changes = differenceOf(before, after)
    expect(changes).toHaveLength(3)
    expect(changes).toContainEqual({ path: ['plan', 'targetGr'], before: 900, after: 905 })
    expect(changes).toContainEqual({ path: ['plan', 'lines', 1], after: { lengthIn: 2 } })
    expect(changes).toContainEqual({ path: ['note'], before: 'old' })
  })

  it('is empty between equals', () => {
    expect(differenceOf({ a: [1, { b: 2 }] }, { a: [1, { b: 2 }] })).toEqual([])
  })
})
