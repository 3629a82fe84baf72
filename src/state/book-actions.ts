/** What the Book does: working out today's way to a past build, and opening it again. */
import type { Again } from '../domain/book/rebuild'
import { rebuildEvents } from '../domain/book/rebuild'
import type { RebuildAsked, Rebuilt } from '../domain/book/rebuild-today'
import { rebuildToday } from '../domain/book/rebuild-today'
import type { Id } from '../domain/records/scalars'
import type { Plan } from '../domain/sheet/plan'
import type { AppState } from './app-store'

/** Works it out in the search's own thread; a search that cannot be run leaves the parts as they were. */
export async function workOutRebuild(
  { shelf, searcher }: Pick<AppState, 'shelf' | 'searcher'>,
  asked: RebuildAsked,
): Promise<Rebuilt> {
  return rebuildToday(asked, shelf, async (problem) => {
    const end = await (await searcher()).find(problem).end
    return end.kind === 'found' ? end.answer : undefined
  })
}

/** @returns the new job's id once it is on the disk, or null */
export async function openRebuild(
  { write }: Pick<AppState, 'write'>,
  again: Again,
  today: Pick<Plan, 'c2cIn' | 'lines'>,
): Promise<Id | null> {
  let opened: Id | null = null
  const saved = await write((_, ids) => {
    const { id, events } = rebuildEvents(again, today, ids)
    opened = id
    return { events }
  })
  return saved ? opened : null
}
