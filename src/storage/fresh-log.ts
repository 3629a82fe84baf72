/**
 * A fresh log. Chromium keeps the databases of a site in one store that appends to a log: the head of a piece, then the piece.
 * Ended between the two, by a crash or a full disk, it leaves a head without its piece. Who opens it next passes over that and
 * appends behind it; the one after takes what stands behind the head for its piece, finds it wrong, and throws the whole
 * database away. Deleting any database of the site makes the store write its log out to a table and begin another, if nobody
 * else writes just then: so an empty one is made and deleted, and the first save waits until that is over.
 * `tests/durability/torn-log.ts` shows all of it.
 */
import type { Ballast } from './ballast'
import type { Engine } from './book'

const WRITTEN_OUT = 150 // ms after the browser has said that the database is deleted; some 20 were seen
const ROOM = 6 * 1024 * 1024 // bytes: a log is written out at four megabytes at the latest
const PATIENCE = 1000 // ms; a save is not kept waiting by another tab

/**
 * Never throws: what it guards against is rare, and it is tried again at the next start.
 *
 * @param ballast tells whether there is room: on a full disk a write that fails closes the book to who only wants to read it
 */
export const freshLog = (book: string, ballast: Pick<Ballast, 'hasRoom'>, engine: Engine = {}): Promise<void> =>
  Promise.race([begin(book, ballast, engine).catch(() => undefined), pause(PATIENCE)])

async function begin(
  book: string,
  ballast: Pick<Ballast, 'hasRoom'>,
  { indexedDB = globalThis.indexedDB }: Engine,
): Promise<void> {
  if (!(await ballast.hasRoom(ROOM))) return
  const name = `${book}-fresh-log`
  const empty = await answer(indexedDB.open(name))
  empty.close()
  await answer(indexedDB.deleteDatabase(name))
  await pause(WRITTEN_OUT)
}

// Not by the library: it says in the console that a database which is just being closed is in the way.
const answer = <T>(request: IDBOpenDBRequest & IDBRequest<T>) =>
  new Promise<T>((done, failed) => {
    request.addEventListener('success', () => done(request.result))
    request.addEventListener('error', () => failed(request.error))
  })

const pause = (milliseconds: number) => new Promise<void>((go) => setTimeout(go, milliseconds))
