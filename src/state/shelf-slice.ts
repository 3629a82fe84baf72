/** The shelf of the store. Its readings take turns: one that ended after a later one would put back what stood before. */
import type { Id } from '../domain/records/scalars'
import { EMPTY_SHELF } from '../domain/stock/shelf'
import type { Shelf } from '../domain/stock/shelf'
import type { AppState } from './app-store'
import { inTurns } from './in-turn'
import { loadShelf, lotViewsOf, shelfChange } from './load-shelf'

export interface ShelfSlice {
  readonly shelf: Shelf
  /** @param changed these alone; left out: all of it */
  readonly refreshShelf: (changed?: readonly Id[]) => Promise<void>
  /** These lots' figures alone: a reading at the bench must not read the whole shelf. */
  readonly refreshLots: (lots: readonly Id[]) => Promise<void>
}

export function shelfSlice(
  set: (change: (now: AppState) => Partial<AppState>) => void,
  get: () => AppState,
): ShelfSlice {
  const inTurn = inTurns()
  return {
    shelf: EMPTY_SHELF,
    refreshShelf: (changed) =>
      inTurn(async () => {
        const { repository } = get()
        if (repository === null) return
        const change = changed && (await shelfChange(repository, [...new Set(changed)]))
        const whole = change === undefined ? await loadShelf(repository) : undefined
        if (repository !== get().repository) return
        set(({ shelf }) => ({ shelf: change?.(shelf) ?? whole ?? shelf }))
      }),
    refreshLots: (lots) =>
      inTurn(async () => {
        const { repository } = get()
        const views = repository === null ? [] : await lotViewsOf(repository, lots)
        set(({ shelf }) => ({ shelf: { ...shelf, lotViews: new Map([...shelf.lotViews, ...views]) } }))
      }),
  }
}
