import { describe, expect, it } from 'vitest'
import type { BenchLock, BenchLocks } from '@/domain/ports'
import { benchHolder } from '@/state/bench-hold'
import type { BenchHold } from '@/state/bench-hold'

/** Locks of which a test gives the answers by hand. */
function heldLocks() {
  const asked: { answer: (lock: BenchLock | undefined) => void; lose: () => void; take: string | undefined }[] = []
  const locks: BenchLocks = {
    hold: (_, lose, take) => new Promise((answer) => asked.push({ answer, lose, take })),
  }
  return { asked, locks }
}

const lockOf = (released: string[], name = 'lock', guarded = true): BenchLock => ({
  guarded,
  release: () => released.push(name),
})

function watched() {
  const seen: (BenchHold | null)[] = []
  const holder = benchHolder((hold) => seen.push(hold))
  return { seen, holder, last: () => seen.at(-1) }
}

describe('a tab at a bench', () => {
  it('works there, hears when another takes over, and takes it back', async () => {
    const { asked, locks } = heldLocks()
    const { holder, last } = watched()
    const first = holder.hold(locks, 'job')
    asked[0]!.answer(lockOf([]))
    await first
    expect(last()).toEqual({ job: 'job', who: 'this tab' })
    asked[0]!.lose()
    expect(last()).toEqual({ job: 'job', who: 'another tab' })
    const again = holder.hold(locks, 'job', 'take over')
    expect(asked[1]!.take).toBe('take over')
    asked[1]!.answer(lockOf([]))
    await again
    expect(last()).toEqual({ job: 'job', who: 'this tab' })
  })

  it('is told that another tab works there, or that nothing guards it', async () => {
    const { asked, locks } = heldLocks()
    const { holder, last } = watched()
    const first = holder.hold(locks, 'job')
    asked[0]!.answer(undefined)
    await first
    expect(last()).toEqual({ job: 'job', who: 'another tab' })
    const second = holder.hold(locks, 'job')
    asked[1]!.answer(lockOf([], 'lock', false))
    await second
    expect(last()).toEqual({ job: 'job', who: 'unguarded' })
  })

  it('lets go on leaving, also of a lock that is granted only afterwards', async () => {
    const { asked, locks } = heldLocks()
    const { holder, last } = watched()
    const released: string[] = []
    const late = holder.hold(locks, 'job')
    const now = holder.hold(locks, 'other job')
    asked[0]!.answer(lockOf(released, 'late'))
    asked[1]!.answer(lockOf(released, 'now'))
    await Promise.all([late, now])
    expect(released).toEqual(['late'])
    asked[0]!.lose()
    expect(last()).toEqual({ job: 'other job', who: 'this tab' })
    holder.leave()
    expect(released).toEqual(['late', 'now'])
    expect(last()).toBeNull()
  })
})
