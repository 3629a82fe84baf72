/** Run-out with its angle at one station: two readings, one command. */
import { deviationOf } from '../domain/bench/deviation-of'
import type { Reading } from '../domain/bench/reading'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { EventDraft } from '../domain/records/write'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppState } from './app-store'

export const takeTogether = (
  { write }: Pick<AppState, 'write'>,
  { job, arrow, step }: { readonly job: Id; readonly arrow: Id; readonly step: string },
  readings: readonly Reading[],
  sheet: Sheet,
) =>
  write((_, ids) => ({
    events: readings.flatMap((reading): readonly EventDraft[] => {
      const deviation = deviationOf(reading, step, sheet, ids.id())
      const read = newEvent('read', { job, arrow }, { step, reading })
      return deviation === null ? [read] : [read, newEvent('deviationOpened', { job, arrow }, deviation)]
    }),
  }))
