/** What the shop's own weighings say of its lots and its glues, in the shape a sheet keeps. */
import type { Id } from '../records/scalars'
import type { Learned, Sheet } from '../sheet/sheet'
import type { LotView } from './lot-view'

const NEWEST = 200 // weighings a sheet carries of one lot
const WHATS: readonly Learned['what'][] = ['weight', 'vanes joint', 'post joint', 'collar joint']

/** @param subject a lot, or a glue's part for its joints */
export function learnedOf(subject: Id, view: LotView | undefined): readonly Learned[] {
  return WHATS.flatMap((what): readonly Learned[] => {
    const newest = (view?.weighed ?? []).filter((each) => each.what === what).slice(-NEWEST)
    if (newest.length === 0) return []
    return [{ subject, what, weighings: newest.map(({ weightGr, pieces }) => ({ gr: weightGr, pieces })) }]
  })
}

/** All that a sheet of these parts and lots can learn from. */
export const learnedFor = (
  { parts, lots }: Pick<Sheet, 'parts' | 'lots'>,
  views: ReadonlyMap<Id, LotView>,
): readonly Learned[] =>
  [...lots.map(({ id }) => id), ...parts.filter(({ part }) => part.kind === 'glue').map(({ id }) => id)].flatMap((id) =>
    learnedOf(id, views.get(id)),
  )

/**
 * A frozen sheet with what the shop has learned since: for forecasts at the bench, where each reading tells of the next
 * arrow. The record itself keeps what it was frozen with.
 */
export const withLearned = (sheet: Sheet, views: ReadonlyMap<Id, LotView>): Sheet => ({
  ...sheet,
  learned: [...sheet.learned.filter(({ subject }) => !views.has(subject)), ...learnedFor(sheet, views)],
})
