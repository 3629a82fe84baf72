/** Who works at a job's bench: this tab, or another one, from which it can be taken over. */
import type { BenchLock, BenchLocks } from '../domain/ports'
import type { Id } from '../domain/records/scalars'

export interface BenchHold {
  readonly job: Id
  /** `unguarded`: the browser has no locks, so nothing keeps another tab from the same bench. */
  readonly who: 'this tab' | 'another tab' | 'unguarded'
}

export interface BenchHolder {
  /** Asks for the bench; with `take over`, takes it from whoever has it. */
  readonly hold: (locks: BenchLocks, job: Id, take?: 'ask' | 'take over') => Promise<void>
  readonly leave: () => void
}

/** @param seen hears every change of who holds the bench that this tab shows; null when it shows none */
export function benchHolder(seen: (hold: BenchHold | null) => void): BenchHolder {
  let lock: BenchLock | undefined
  let turn = 0 // an answer that comes after the bench was left belongs to nobody

  function leave() {
    turn += 1
    lock?.release()
    lock = undefined
    seen(null)
  }
  return {
    leave,
    async hold(locks, job, take) {
      leave()
      const mine = turn
      const lost = () => {
        if (mine !== turn) return
        lock = undefined
        seen({ job, who: 'another tab' })
      }
      const held = await locks.hold(job, lost, take)
      if (mine !== turn) return held?.release()
      lock = held
      seen({ job, who: held === undefined ? 'another tab' : held.guarded ? 'this tab' : 'unguarded' })
    },
  }
}
