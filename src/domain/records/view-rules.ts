/**
 * How views are made. A view is a row for a list or a search, kept beside the records and written in the same transaction;
 * it holds nothing that cannot be made again from them. The storage knows when to make one, these rules know how: pure
 * functions, handed in.
 */
import type { AnyEvent } from './read-event'
import type { AnyFact } from './read-fact'
import type { FactKind } from './kinds'
import type { Personal } from './personal'
import type { Hash, Id } from './scalars'

/** What every job view has, for the indexes; a rule's own view adds what its list shows. */
export interface JobRow {
  readonly id: Id
  /** When its last event was, as finely as the list's order asks. */
  readonly updated: string
  /** Search words, lower case, without accents: see `wordsIn`. */
  readonly words: readonly string[]
  /** The lots whose view stands on this job. */
  readonly lots: readonly Id[]
}
export interface ArrowRow {
  readonly id: Id
  readonly job: Id
  /** Of the shaft; left out while unknown. */
  readonly lot?: Id
}
export interface LotRow {
  readonly id: Id
  /** Left out once it is used up: only what is on the shelf is read on opening. */
  readonly onShelf?: 1
}

export interface Subject {
  readonly kind: FactKind
  readonly subject: Id
}

/** All that a job's view is made of. */
export interface JobStory<F = unknown> {
  readonly job: Id
  /** What every event of the job that reads comes to, in order. */
  readonly fold: F
  /** The heads of each subject that `standsOn` named, and the facts it named by hash. */
  readonly facts: readonly AnyFact[]
  /** What is not forgotten of the personal data that `personalOf` named. */
  readonly personal: readonly Personal[]
}

/** `S` is what a job means to one lot; `F` what its events come to, so that one more is added and not all told again. */
export interface ViewRules<
  J extends JobRow = JobRow,
  A extends ArrowRow = ArrowRow,
  L extends LotRow = LotRow,
  S = unknown,
  F = unknown,
> {
  /** What no events come to. */
  readonly begin: F
  after(fold: F, event: AnyEvent): F
  /** Which facts a job's view stands on. When one of them gets a new version the view is made again. */
  standsOn(fold: F): { readonly subjects: readonly Subject[]; readonly facts: readonly Hash[] }
  /** The personal data and notes that a record names. */
  personalOf(record: AnyFact | AnyEvent): readonly Hash[]
  /** Undefined for a story without its beginning, as a recovered backup may hold: kept, and not listed. */
  jobViews(
    story: JobStory<F>,
  ): { readonly job: J; readonly arrows: readonly A[]; readonly shares: ReadonlyMap<Id, S> } | undefined
  /** Which lots a record says something about. */
  lotsOf(record: AnyFact | AnyEvent): readonly Id[]
  /** A lot's view with some more records told. It must come out the same in whatever order they are told. */
  lotView(lot: Id, before: L | undefined, records: readonly (AnyFact | AnyEvent)[]): L
  /** A lot's view with what a job means to it now, in place of what it meant before; nothing, if it no longer does. */
  lotWithJob(lot: Id, before: L | undefined, job: Id, share: S | undefined): L
  /** Words by which a fact's subject is found in lists: a client's name, a part's. */
  wordsOf(fact: AnyFact, personal: readonly Personal[]): readonly string[]
  /** The subjects that a lot is part of: its part. Of other kinds of fact none. */
  partOf(fact: AnyFact): readonly Id[]
}
