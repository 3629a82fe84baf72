/** A table of parts onto the shelf: all of it in one command, or none. */
import { newEvent, newFact } from '../domain/records/write'
import type { AnyFact } from '../domain/records/read-fact'
import type { EventDraft, Said } from '../domain/records/write'
import type { TableRow } from '../domain/stock/read-part-table'
import type { AppState } from './app-store'

const SLICE = 100 // rows hashed between two reports of progress

/**
 * @param breathe lets the page repaint; told how many rows are made ready, it says whether to go on
 * @param written told how many of them are on the disk
 */
export async function importParts(
  { write, builder, now }: Pick<AppState, 'write' | 'builder' | 'now'>,
  rows: readonly TableRow[],
  id: () => string,
  breathe: (done: number) => Promise<boolean>,
  written: (done: number) => void,
): Promise<boolean | 'stopped'> {
  const said: Said = { by: builder, at: now() }
  const facts: AnyFact[] = []
  const events: EventDraft[] = []
  const fresh = rows.filter((row) => row.kind === 'new')
  for (const [i, { part, lot }] of fresh.entries()) {
    if (i % SLICE === 0 && !(await breathe(i))) return 'stopped'
    const subject = id()
    facts.push(newFact(said, 'part', subject, part))
    if (lot === undefined) continue
    const lotId = id()
    const receivedOn = said.at.slice(0, 10)
    const body = { part: subject, code: lot.code || receivedOn, receivedOn, received: lot.pieces, numbered: [] }
    facts.push(newFact(said, 'lot', lotId, body))
    events.push(newEvent('stockMoved', { job: null }, { part: subject, lot: lotId, by: lot.pieces, why: 'received' }))
  }
  if (!(await breathe(fresh.length))) return 'stopped'
  return write(
    () => ({ facts, events }),
    (share) => written(Math.round(share * fresh.length)),
  )
}
