/** One arrow beside others: a sheet and what it is called there. */
import type { Sheet } from '../../../domain/sheet/sheet'

export interface Candidate {
  /** Also what its figures are called in the page. */
  readonly key: string
  readonly title: string
  readonly sheet: Sheet
}
