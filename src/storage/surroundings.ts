/** What the storage needs of its surroundings besides IndexedDB, so that a test can stand in for any of it. */
import type { Change, Tally } from '../domain/ports'
import type { Ballast } from './ballast'
import type { offThread } from './off-thread'
import type { SecondCopy } from './second-copy/second-copy'

export interface Remembered {
  readonly tally?: Tally
  /** A write failed and the book was not recovered since: the browser may still throw it away. */
  readonly failed?: string
}

export interface Surroundings {
  /** Remembers, outside of the book, how much it held and whether a write to it failed. */
  readonly outside: {
    read(book: string): Remembered | undefined
    /** Keeps the larger of what it knew and this: another tab may have written more already. */
    write(book: string, tally: Tally): void
    fail(book: string, detail: string): void
    forget(book: string): void
  }
  /** The newest records once more, outside of the database. */
  readonly secondCopy?: SecondCopy
  /** Room for a rescue on a full disk. */
  readonly ballast?: Ballast
  /** Guards against a torn end of the browser's log; resolves when saves may be made. */
  readonly freshLog?: () => Promise<void>
  /** Does long work in a worker; left out where there are none, and then it is done here. */
  readonly offThread?: typeof offThread
  /** Calls once after some milliseconds; returns how to call it off. */
  after(milliseconds: number, call: () => void): () => void
  /** Tells other tabs what changed, and hears it from them. */
  readonly announcer: {
    tell(change: Change): void
    hear(heard: (change: Change) => void): void
    close(): void
  }
}
