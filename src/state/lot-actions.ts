/** What a lot's page does: each one command, true once it is on the disk. */
import type { Hash, Id } from '../domain/records/scalars'
import { newEvent, newFact } from '../domain/records/write'
import type { Lot } from '../domain/stock/lot'
import type { Standing } from '../domain/stock/shelf'
import type { AppState } from './app-store'

type Write = Pick<AppState, 'write'>

/** Parts received together: the lot and its count on the shelf. */
export const receiveLot = (
  { write }: Write,
  part: Id,
  lot: Pick<Lot, 'code' | 'receivedOn' | 'received' | 'openedOn' | 'expiresOn'>,
) =>
  write((said, ids) => {
    const id = ids.id()
    return {
      facts: [newFact(said, 'lot', id, { part, ...lot, numbered: [] })],
      events: [newEvent('stockMoved', { job: null }, { part, lot: id, by: lot.received, why: 'received' })],
    }
  })

/** Every lot that the part ever had onto the shelf, those used up too. */
export const showLotsOf = async (
  { repository, showLots }: Pick<AppState, 'repository' | 'showLots'>,
  part: Id,
): Promise<void> => showLots((await repository?.lotsOfPart(part)) ?? [])

const nextVersion = ({ hash, rivals }: Standing<Lot>): { parents: readonly Hash[] } => ({ parents: [hash, ...rivals] })

export const changeLot = ({ write }: Write, before: Standing<Lot>, change: Partial<Lot>) =>
  write((said) => ({
    facts: [newFact(said, 'lot', before.id, { ...before.body, ...change }, nextVersion(before))],
  }))

/** @param hold the reason; undefined releases it */
export const holdLot = ({ write }: Write, before: Standing<Lot>, hold: string | undefined) =>
  write((said) => {
    const { hold: _, ...rest } = before.body
    const body: Lot = hold === undefined ? rest : { ...rest, hold }
    return { facts: [newFact(said, 'lot', before.id, body, nextVersion(before))] }
  })

export interface Weighed {
  readonly weightGr: number
  readonly pieces: number
  readonly raw: string
  readonly scale: string
}
const weighedEvent = (lot: Id, weighed: Weighed) => newEvent('lotWeighed', { job: null }, { lot, ...weighed })

export const weighLot = ({ write }: Write, lot: Id, weighed: Weighed) =>
  write(() => ({ events: [weighedEvent(lot, weighed)] }))

/** A piece gets its number and its own weight; the lot learns from it as from any other. */
export const numberPiece = async (
  { write, refreshShelf }: Pick<AppState, 'write' | 'refreshShelf'>,
  before: Standing<Lot>,
  no: string,
  weighed: Weighed,
): Promise<boolean> => {
  const numbered = [...before.body.numbered, { no, weightGr: weighed.weightGr }]
  const saved = await write((said) => ({
    facts: [newFact(said, 'lot', before.id, { ...before.body, numbered }, nextVersion(before))],
    events: [weighedEvent(before.id, weighed)],
  }))
  // The next piece follows this version.
  if (saved) await refreshShelf([before.id])
  return saved
}

export const setWeightAside = ({ write }: Write, lot: Id, target: Hash, reason: string) =>
  write(() => ({ events: [newEvent('lotWeightSetAside', { job: null }, { lot, target, reason })] }))

/** @param found pieces on the shelf now, against what the book had */
export const takeStock = ({ write }: Write, { id, body }: Standing<Lot>, found: number, onHand: number) =>
  write(() => ({
    events: [newEvent('stockMoved', { job: null }, { part: body.part, lot: id, by: found - onHand, why: 'counted' })],
  }))
