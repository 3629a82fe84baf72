/** The lots of a part: those that may be used, and all of them. A used-up one that was read changes no list. */
import type { Id } from '../records/scalars'
import type { PlanLine } from '../sheet/plan'
import type { Lot } from './lot'
import { isUsedUp } from './lot-view'
import type { Shelf, Standing } from './shelf'

/** Whether nothing is left of a lot; what it holds is not known of every lot. */
export const isOffShelf = (shelf: Shelf, lot: Id): boolean => {
  const view = shelf.lotViews.get(lot)
  return view !== undefined && isUsedUp(view)
}

/**
 * The lots of a part that may be used, newest receipt last: not on hold, and not used up. Where all are used up it is the
 * newest, since a count can be wrong.
 */
export function lotsOfPart(shelf: Shelf, part: Id): readonly Standing<Lot>[] {
  const lots = lotsOf(shelf, part)
    .filter(({ body }) => body.hold === undefined)
    .toReversed()
  const left = lots.filter(({ id }) => !isOffShelf(shelf, id))
  return left.length === 0 ? lots.slice(-1) : left
}

/** What a line may be changed to, and the lot that it names already, whatever became of that. */
export function lotsForLine(shelf: Shelf, { part, lot }: Pick<PlanLine, 'part' | 'lot'>): readonly Standing<Lot>[] {
  const offered = lotsOfPart(shelf, part)
  const own = lot === null ? undefined : shelf.lots.get(lot)
  return own === undefined || offered.some(({ id }) => id === lot) ? offered : [own, ...offered]
}

/** Every lot of a part that was read, those on hold too, newest receipt first. */
export const lotsOf = (shelf: Shelf, part: Id) =>
  [...shelf.lots.values()]
    .filter((each) => each.body.part === part)
    .toSorted((a, b) => (receipt(a) < receipt(b) ? 1 : -1))

/** Ids are in the order in which the lots were written down: they decide within a day. */
const receipt = ({ id, body }: Standing<Lot>) => `${body.receivedOn} ${id}`
