/** Mending and pairing at the bench: each one command. */
import type { Id } from '../domain/records/scalars'
import type { EventDraft } from '../domain/records/write'
import type { AppState } from './app-store'

/** @param make the events, told the moment they are made and the id of a line that may be new */
export const mendAtBench = (
  { write }: Pick<AppState, 'write'>,
  make: (now: string, line: Id) => readonly EventDraft[],
) => write(({ at }, ids) => ({ events: make(at, ids.id()) }))
