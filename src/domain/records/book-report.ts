/** What a check of the whole book found. */
import type { ChainProblem } from './chain'
import type { LogHead } from './event'
import type { Hash } from './scalars'

export type BookProblem =
  | ChainProblem
  | { readonly problem: 'unreadable'; readonly table: string; readonly key: string; readonly detail: string }
  | { readonly problem: 'changed record'; readonly table: string; readonly key: Hash }
  /** A name, a note or a picture that a record names is not there, and no redaction took it out. */
  | { readonly problem: 'named missing'; readonly record: Hash; readonly named: Hash }
  | { readonly problem: 'parent missing'; readonly fact: Hash; readonly parent: Hash }

export interface BookReport {
  readonly facts: number
  readonly events: number
  readonly personal: number
  /** Records a later app wrote; they are kept as they are. */
  readonly tooNew: number
  /** At most a thousand are listed. */
  readonly problems: readonly BookProblem[]
  /** Where each log was found to stand. */
  readonly logs: readonly LogHead[]
}
