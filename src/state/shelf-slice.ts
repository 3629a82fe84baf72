/** The shelf of the store. Its readings take turns: one that ended after a later one would put back what stood before. */
import type { Id } from '../domain/records/scalars'
import { EMPTY_SHELF } from '../domain/stock/shelf'
import type { Shelf } from '../domain/stock/shelf'
import type { AppRepository } from './app-repository'
import type { AppState } from './app-store'
import { inTurns } from './in-turn'
import { loadShelf, moreLots, shelfChange } from './load-shelf'

export interface ShelfSlice {
  readonly shelf: Shelf
  /** @param changed these alone; left out: all of it */
  readonly refreshShelf: (changed?: readonly Id[]) => Promise<void>
  /** The figures of these lots, which were told something: a reading at the bench must not read the whole shelf. */
  readonly refreshLots: (lots: readonly Id[]) => Promise<void>
  /** Used-up lots are read when something names them: these, by id. */
  readonly showLots: (lots: readonly Id[]) => Promise<void>
}

export function shelfSlice(
  set: (change: (now: AppState) => Partial<AppState>) => void,
  get: () => AppState,
): ShelfSlice {
  const inTurn = inTurns()
  /** What is read of the book that is open, put on its shelf in turn; what was read of another is dropped. */
  const change = (read: (repository: AppRepository, before: Shelf) => Promise<(before: Shelf) => Shelf>) =>
    inTurn(async () => {
      const { repository, shelf } = get()
      if (repository === null) return
      const changed = await read(repository, shelf)
      if (repository === get().repository) set((now) => ({ shelf: changed(now.shelf) }))
    })
  return {
    shelf: EMPTY_SHELF,
    refreshShelf: (changed) =>
      change(async (repository, before) => {
        const few = changed && (await shelfChange(repository, [...new Set(changed)]))
        if (few !== undefined) return few
        const whole = await loadShelf(repository, changed === undefined ? [] : [...before.lots.keys()])
        return () => whole
      }),
    // A lot that was used up comes back when a job gives a piece of it back.
    refreshLots: (lots) => change((repository, before) => moreLots(repository, lots, before)),
    showLots: (lots) =>
      change((repository, before) =>
        moreLots(
          repository,
          lots.filter((lot) => !before.lots.has(lot)),
        ),
      ),
  }
}
