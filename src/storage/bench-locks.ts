/** Bench locks by the browser's Web Locks: held by one tab, freed by the browser when the tab ends, however it ends. */
import type { BenchLock, BenchLocks } from '../domain/ports'

/** @param book the database's name: the same job in the demo shop is another bench */
export function benchLocks(book: string, locks: LockManager | undefined = navigator.locks): BenchLocks {
  return {
    hold(job, lost, take = 'ask') {
      // Over plain http to another device a browser has no locks: the bench works, nothing keeps two tabs apart.
      if (!locks) return Promise.resolve({ guarded: false, release: () => {} })
      return new Promise<BenchLock | undefined>((answer) => {
        let letGo = () => {}
        const held = new Promise<void>((done) => (letGo = done))
        const options: LockOptions = take === 'take over' ? { steal: true } : { ifAvailable: true }
        locks
          .request(`${book}:bench:${job}`, options, (lock) => {
            answer(lock === null ? undefined : { guarded: true, release: () => letGo() })
            return lock === null ? undefined : held
          })
          .catch(lost) // the browser ends the request when another tab takes over
      })
    },
  }
}
