/** What the domain needs from outside, as it would like to be spoken to. The composition root hands the real ones in. */
import type { BackupCheck, Counts, Exported, StagedBackup } from './records/backup'
import type { BookReport } from './records/book-report'
import type { Event, LogHead, NewEvent } from './records/event'
import type { Fact } from './records/fact'
import type { FactKind } from './records/kinds'
import type { Personal } from './records/personal'
import type { Photo } from './records/photo'
import type { AnyEvent } from './records/read-event'
import type { FactOf, ReadFact, Unread } from './records/read-fact'
import type { Hash, Id } from './records/scalars'
import type { ArrowRow, JobRow, LotRow } from './records/view-rules'

export interface Clock {
  /** The present moment, UTC, ISO 8601 with milliseconds. */
  now(): string
}

export interface Ids {
  /** A new UUIDv7. */
  id(): Id
  /** Sixteen random bytes in hexadecimal, to salt personal data. */
  salt(): string
}

/** One thing the builder did: written whole or not at all. Its id makes giving it again harmless. */
export interface Command {
  readonly id: Id
  readonly by: string
  readonly at: string
  readonly facts?: readonly Fact<string, unknown>[]
  readonly events?: readonly NewEvent<string, unknown>[]
  readonly personal?: readonly Personal[]
  readonly photos?: readonly Photo[]
}

/** Why a command is not on the disk. What the builder entered stays on the screen. */
export type NotSavedReason =
  | 'timeout' // no answer in time; it may still arrive, and giving the same command again finds out
  | 'stopped' // a write failed, or records are missing: see `RepositoryState`
  | 'newer-app' // the book was written by a later version of the app
  | 'closed' // another tab updated the book; reload

export type Receipt =
  | {
      readonly kind: 'saved'
      readonly command: Id
      /** It had been saved before, by an earlier try. */
      readonly again: boolean
      readonly events: readonly Event[]
    }
  | { readonly kind: 'not-saved'; readonly command: Id; readonly why: NotSavedReason; readonly detail: string }

/** How much a book holds: kept in the book and, against silent loss, outside it too. */
export interface Tally {
  readonly facts: number
  readonly events: number
  /** The end of this book's own log. */
  readonly head: LogHead
}

export type RepositoryState =
  /** `restored`: records were missing, and the device's own second copy brought them back. */
  | { readonly kind: 'open'; readonly restored?: true }
  /** A write failed. Reading goes on; writing waits for `recover`. */
  | { readonly kind: 'failed'; readonly detail: string }
  /** The book is shorter than it was when last written. Writing waits for a restored backup or `acceptLoss`. */
  | { readonly kind: 'missing'; readonly remembered: Tally; readonly found: Tally }
  | { readonly kind: 'newer-app'; readonly stored: number; readonly known: number }
  /** Another tab has updated or removed the book: reload. */
  | { readonly kind: 'closed' }

/** What changed. `J`: how a job stands in lists. */
export interface Change<J extends JobRow = JobRow> {
  readonly jobs: readonly Id[]
  readonly subjects: readonly Id[]
  readonly lots: readonly Id[]
  /** After one command: how many facts and events it wrote, and how its jobs now stand. */
  readonly saved?: { readonly records: number; readonly jobs: readonly J[] }
  /** Somebody was forgotten: whoever holds a copy must look again. */
  readonly forgotten?: true
}

/** Every event of a job that reads, in order, and what does not. */
export interface JobEvents {
  readonly events: readonly AnyEvent[]
  readonly unread: readonly Unread[]
}

/** A file as it streams in. */
export type Source = ReadableStream<Uint8Array<ArrayBuffer>>

/** A place outside the database that holds a file while the database is founded anew. */
export interface Keep {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>
  close(): Promise<void>
  /** What was written, from its beginning; may be asked more than once. */
  read(): Promise<Source>
}

/** `file` is what was kept in memory, to be offered as a download: until the end it may be the only copy. */
export type Recovered = { readonly file?: Blob } & (
  | { readonly kind: 'recovered'; readonly counts: Counts; readonly lost: readonly string[] }
  | { readonly kind: 'not-recovered'; readonly problem: string }
  /** The browser had lost records before it could be asked for them: only a backup brings them back. */
  | { readonly kind: 'lost'; readonly remembered: Tally; readonly found: Tally }
)

/** The book as a whole: out to a file, in from one, checked, and rescued. */
export interface Archive {
  /** Writes the backup; `at` is noted as the time of the last one when the whole was written. */
  backUp(
    at: string,
    write: (bytes: Uint8Array<ArrayBuffer>) => Promise<void> | void,
    progress?: (records: number) => void,
  ): Promise<Exported>
  /** Reads a backup to its end and changes nothing. */
  check(source: Source, progress?: (bytes: number) => void): Promise<BackupCheck>
  /** Lays a backup beside the book. A damaged one too: its readable records can be added, if a person asks for that. */
  stage(source: Source, progress?: (bytes: number) => void): Promise<StagedBackup>
  /** @param progress told the share of it that is done, 0 to 1; none of it stands before the receipt says so */
  addStaged(progress?: (share: number) => void): Promise<Receipt>
  discardStaged(): Promise<void>
  /** Checks every hash, log and reference of the book. */
  verify(progress?: (checked: number) => void): Promise<BookReport>
  /**
   * After a failed write: out, check, remove, found anew, in, compare. Best at once, before the browser is closed.
   *
   * @param keep where the file lies meanwhile; in memory, if left out
   */
  recover(keep?: Keep): Promise<Recovered>
  /** A table for a spreadsheet, piece by piece. */
  csv(what: 'readings' | 'builds', write: (text: string) => Promise<void> | void): Promise<void>
  readonly file: BackupFile
}

/** A file chosen once, to which backups go from then on. */
export interface BackupFile {
  /** Whether the browser can; otherwise a backup is a download. */
  readonly supported: boolean
  /** Its name, or undefined while none is chosen. */
  name(): Promise<string | undefined>
  /** From a click only. */
  choose(suggestedName: string): Promise<'chosen' | 'cancelled' | 'not supported'>
  /** @param mayAsk from a click: the browser may ask the user again */
  save(
    at: string,
    mayAsk: boolean,
  ): Promise<
    | { readonly kind: 'saved'; readonly exported: Exported }
    | { readonly kind: 'no file' | 'not allowed' }
    | { readonly kind: 'failed'; readonly problem: string }
  >
}

export interface BackupState {
  /** When the last backup was made, or null. */
  readonly at: string | null
  /** Facts and events written since. */
  readonly lacks: number
}

export interface Repository<J extends JobRow = JobRow, A extends ArrowRow = ArrowRow, L extends LotRow = LotRow> {
  /**
   * Writes a command in one strict transaction. Only after `saved` may a screen say so.
   *
   * @param progress told the share of it that is written, 0 to 1; none of it stands before the receipt says so
   * @throws for a malformed command
   */
  commit(command: Command, progress?: (share: number) => void): Promise<Receipt>
  state(): RepositoryState
  /** Called after every change of state and after every commit, this tab's or another's. Returns how to stop. */
  watch(seen: {
    readonly state?: (state: RepositoryState) => void
    readonly change?: (change: Change<J>, by: 'this tab' | 'another tab') => void
  }): () => void

  eventsOfJob(job: Id): Promise<JobEvents>
  fact(hash: Hash): Promise<ReadFact | undefined>
  facts(hashes: readonly Hash[]): Promise<readonly (ReadFact | undefined)[]>
  /** Every version of a subject, oldest first. */
  versionsOf<K extends FactKind>(kind: K, subject: Id): Promise<readonly ReadFact<FactOf<K>>[]>
  /** The present version of a subject; more than one when two devices changed it apart. */
  headsOf<K extends FactKind>(kind: K, subject: Id): Promise<readonly ReadFact<FactOf<K>>[]>
  /** The heads of every subject of a kind: all parts, all lots, all clients. */
  headsOfKind<K extends FactKind>(kind: K): Promise<readonly ReadFact<FactOf<K>>[]>
  /** Subjects of a kind with a word beginning with each of these. */
  findSubjects(kind: FactKind, words: readonly string[], limit?: number): Promise<readonly Id[]>
  /** Undefined when it was forgotten, or has not arrived with a backup. */
  personal(hash: Hash): Promise<Personal | undefined>
  photo(hash: Hash): Promise<Photo | undefined>

  /** Latest first. */
  jobViews(limit?: number): Promise<readonly J[]>
  jobView(job: Id): Promise<J | undefined>
  /** Jobs that stand on a subject, such as a client. */
  jobViewsOf(subject: Id): Promise<readonly J[]>
  /**
   * Jobs with a word beginning with each of these, last opened first; every job, last changed first, where no word is
   * asked. As many as the limit says, and how many there are.
   */
  findJobs(words: readonly string[], limit?: number): Promise<{ readonly jobs: readonly J[]; readonly of: number }>
  arrowViews(job: Id): Promise<readonly A[]>
  arrowViewsOfLot(lot: Id): Promise<readonly A[]>
  /**
   * The lots in stock, and of a part of which nothing is left the newest: no more of them for all that was ever used up.
   * Views that are no lot's, a glue's joints and the shop's passes, are among them.
   */
  lotsOnShelf(): Promise<{ readonly lots: readonly ReadFact<FactOf<'lot'>>[]; readonly views: readonly L[] }>
  /** Every lot that a part ever had. */
  lotsOfPart(part: Id): Promise<readonly Id[]>
  lotView(lot: Id): Promise<L | undefined>

  tally(): Promise<Tally>
  backupState(): Promise<BackupState>
  /** The records lost are lost: go on with what is there. */
  acceptLoss(): Promise<void>
  readonly archive: Archive
  close(): void
}

/** One active bench a job. Another tab reads, until it takes over. */
export interface BenchLocks {
  /** Resolves when the job's bench is ours, or is another tab's. `lost` is called when another tab takes over. */
  hold(job: Id, lost: () => void, take?: 'ask' | 'take over'): Promise<BenchLock | undefined>
}
export interface BenchLock {
  /** False where the browser has no locks: nothing keeps another tab from the same bench. */
  readonly guarded: boolean
  release(): void
}

/** Small settings of this device that are no record: which book was open, who stands at the bench. */
type DeviceSetting = 'book' | 'builder' | 'scale' | 'scaleName' | 'theme'
export interface DeviceMemory {
  recall(key: DeviceSetting): string | null
  keep(key: DeviceSetting, value: string): void
}
