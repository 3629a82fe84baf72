/** Freezing: the draft becomes a fact that never changes, and the job remembers it; its parts are reserved from then on. */
import type { Job } from '../job/job'
import type { Ids } from '../ports'
import type { AnyFact } from '../records/read-fact'
import { newEvent, newFact } from '../records/write'
import type { EventDraft, Said } from '../records/write'
import type { Sheet } from './sheet'

/** @param reason from version 2 on: why it had to change */
export function freeze(job: Job, sheet: Sheet, said: Said, reason?: string) {
  const before = job.frozen.at(-1)
  const fact = newFact(said, 'sheet', job.id, sheet, {
    parents: before === undefined ? [] : [before.sheet],
    ...(reason === undefined ? {} : { reason }),
  })
  const about = { job: job.id }
  const facts: readonly AnyFact[] = [fact]
  const events: readonly EventDraft[] = [newEvent('frozen', about, { sheet: fact.hash, version: sheet.version })]
  return { facts, events }
}

/** The set is started on the newest frozen sheet: its arrows get their numbers and codes. */
export function startSet(job: Job, sheet: Sheet, ids: Ids): { readonly events: readonly EventDraft[] } {
  const frozen = job.frozen.at(-1)
  if (frozen === undefined) throw new Error('no frozen sheet to start on')
  const arrows = Array.from({ length: sheet.plan.quantity + sheet.plan.spares }, (_, i) => ({
    id: ids.id(),
    no: i + 1,
    code: arrowCode(job.code, i + 1),
  }))
  return { events: [newEvent('setStarted', { job: job.id }, { sheet: frozen.sheet, arrows })] }
}

/** What stands on an arrow's tag: the job's number and the arrow's. */
export const arrowCode = (jobCode: string, no: number) => `${jobCode}/${no}`
