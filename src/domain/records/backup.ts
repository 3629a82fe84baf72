/** What is said of a backup, its making, its checking and its adding. How the file looks stands in docs/records.md. */
import type { ChainProblem } from './chain'
import type { Hash, Id } from './scalars'

export const RECORD_KINDS = ['event', 'fact', 'personal', 'photo'] as const
export type RecordKind = (typeof RECORD_KINDS)[number]
export type Counts = Readonly<Record<RecordKind, number>>

export interface Exported {
  readonly counts: Counts
  readonly root: Hash
  /** Rows that the browser could not read any more, by table and key. They are not in the file. */
  readonly lost: readonly string[]
}

export type BackupCheck =
  | {
      readonly kind: 'whole'
      readonly counts: Counts
      readonly root: Hash
      /** Records a later app wrote: kept as they are, shown by a later app. */
      readonly tooNew: number
      /** What is wrong with the logs in it; the file itself is as it was made. */
      readonly chain: readonly ChainProblem[]
    }
  /** Changed or cut short. `readable` says what a recovery would bring. */
  | { readonly kind: 'damaged'; readonly problems: readonly string[]; readonly readable: Counts }
  /** Larger, deeper or newer than this app takes: nothing of it is used. */
  | { readonly kind: 'refused'; readonly problem: string }

/** A backup that lies beside the book, to be looked at before it is added. */
export interface StagedBackup {
  readonly check: BackupCheck
  /** What adding would bring. */
  readonly adds: Counts
  readonly alreadyThere: Counts
  /** Records of people whom this book has forgotten: they are not brought back. */
  readonly forgotten: number
  /** Jobs of which something is new. */
  readonly jobs: readonly Id[]
}
