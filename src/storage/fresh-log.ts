/**
 * A fresh log. Chromium keeps the databases of a site in one store that appends to a log: the head of a piece, then the piece.
 * Ended between the two, by a crash or a full disk, it leaves a head without its piece. Who opens it next passes over that and
 * appends behind it; the one after takes what stands behind the head for its piece, finds it wrong, and throws the whole
 * database away. Deleting any database of the site makes the store write its log out to a table and begin another, if nobody
 * else writes just then: so an empty one is made and deleted, and the first save waits until that is over.
 * `tests/durability/torn-log.ts` shows all of it.
 */
import { Dexie } from 'dexie'
import type { Engine } from './book'

const WRITTEN_OUT = 150 // ms after the browser has said that the database is deleted; some 20 were seen
const PATIENCE = 1000 // ms; a save is not kept waiting by another tab

/** Never throws: what it guards against is rare, and it is tried again at the next start. */
export const freshLog = (book: string, engine: Engine = {}): Promise<void> =>
  Promise.race([begin(book, engine).catch(() => undefined), pause(PATIENCE)])

async function begin(book: string, engine: Engine): Promise<void> {
  const empty = new Dexie(`${book}-fresh-log`, engine)
  empty.version(1).stores({ nothing: 'id' })
  await empty.open()
  await empty.delete()
  await pause(WRITTEN_OUT)
}

const pause = (milliseconds: number) => new Promise<void>((go) => setTimeout(go, milliseconds))
