/** Keeps one of the readings that two devices took apart, and withdraws the others. */
import type { KeptReading } from '../domain/bench/built'
import type { Dispute } from '../domain/bench/disputes'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { AppState } from './app-store'

export const settleDispute = (
  { write }: Pick<AppState, 'write'>,
  job: Id,
  { arrow, readings }: Dispute,
  kept: KeptReading,
): Promise<boolean> =>
  write(() => ({
    events: readings
      .filter(({ event }) => event !== kept.event)
      .map(({ event }) => {
        const reason = `two devices read it apart; the reading of ${kept.by} is kept`
        return newEvent('corrected', { job, arrow }, { target: event, reading: null, reason })
      }),
  }))
