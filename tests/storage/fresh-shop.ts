/** A shop in memory: a book on a simulated IndexedDB, counted ids, timers that a test lets run out by hand. */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import type { Change, Command, Ids } from '@/domain/ports'
import { personalOf } from '@/domain/records/personal'
import { uuidFrom } from '@/domain/records/uuid-from'
import { newEvent, newFact } from '@/domain/records/write'
import type { Id } from '@/domain/records/scalars'
import { Book } from '@/storage/book'
import { openRepository } from '@/storage/open-repository'
import type { Remembered, Surroundings } from '@/storage/surroundings'
import { PLAIN_RULES } from './stand-in-rules'

export const AT = '2031-05-04T09:30:00.000Z'

/** Ids that differ, in the order asked for, the same in every run with the same seed. */
export function countedIds(seed = 0): Ids {
  let n = seed * 1_000_000
  const bytes = () => {
    n += 1
    return Uint8Array.from({ length: 16 }, (_, i) => (n * 2_654_435_761 * (i + 1)) >>> (i % 4 === 0 ? 3 : i))
  }
  return {
    id: () => uuidFrom(1_900_000_000_000 + n * 1000, bytes()),
    salt: () => [...bytes()].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
  }
}

/** Surroundings of which a test can see and do everything. */
export function heldSurroundings() {
  const remembered = new Map<string, Remembered>()
  const waiting = new Set<() => void>()
  const told: Change[] = []
  const surroundings: Surroundings = {
    outside: {
      read: (book) => remembered.get(book),
      write: (book, tally) => remembered.set(book, { ...remembered.get(book), tally }),
      fail: (book, failed) => remembered.set(book, { ...remembered.get(book), failed }),
      forget: (book) => remembered.delete(book),
    },
    after: (_, call) => {
      waiting.add(call)
      return () => waiting.delete(call)
    },
    announcer: { tell: (change) => told.push(change), hear: () => {}, close: () => {} },
  }
  return { surroundings, remembered, told, runOut: () => waiting.forEach((call) => call()) }
}

export function engineOf(indexedDB = new IDBFactory()) {
  return { indexedDB, IDBKeyRange }
}

let shops = 0
export async function freshShop(
  options: { engine?: ReturnType<typeof engineOf>; held?: ReturnType<typeof heldSurroundings>; name?: string } = {},
) {
  shops += 1
  const { engine = engineOf(), held = heldSurroundings(), name = 'grainwright-test' } = options
  const ids = countedIds(shops)
  const open = () => openRepository({ name, rules: PLAIN_RULES, ids, surroundings: held.surroundings, engine })
  const repository = await open()
  return { repository, ids, engine, held, name, open, book: new Book(name, engine), ...commands(ids) }
}

export type Shop = Awaited<ReturnType<typeof freshShop>>

/** Commands of the kinds the app gives. */
export function commands(ids: Ids) {
  const command = (parts: Omit<Command, 'id' | 'by' | 'at'>, at = AT): Command => ({
    id: ids.id(),
    by: 'Ansa',
    at,
    ...parts,
  })
  return {
    command,
    newClient: (name: string, subject: Id = ids.id(), parents: readonly string[] = []) => {
      const personal = personalOf(ids.salt(), { name })
      const fact = newFact(
        { by: 'Ansa', at: AT },
        'client',
        subject,
        { personal: personal.hash, consent: true },
        { parents },
      )
      return { subject, fact, personal, command: command({ facts: [fact], personal: [personal] }) }
    },
    openJob: (client: Id | null = null, job: Id = ids.id()) => {
      const events = [
        newEvent('opened', { job }, { kind: 'order', of: null }),
        newEvent('clientSet', { job }, { client }),
      ]
      return { job, command: command({ events }) }
    },
    read: (job: Id, arrow: Id, valueGr: number, at = AT) => {
      const reading = {
        point: 'cutWeight' as const,
        value: valueGr,
        unit: 'gr' as const,
        raw: `${valueGr}`,
        source: 'typed' as const,
        stable: true,
        attempt: 1,
        scale: 'Scale 1',
        takenAt: at,
      }
      return command({ events: [newEvent('read', { job, arrow }, { step: 'weigh cut shaft', reading })] }, at)
    },
    moveStock: (part: Id, lot: Id, by: number) =>
      command({ events: [newEvent('stockMoved', { job: null }, { part, lot, by, why: 'received' })] }),
  }
}
