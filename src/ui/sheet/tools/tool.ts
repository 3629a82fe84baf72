/** What every tool of the sheet is given. */
import type { CutFigures } from '../../../domain/sheet/cut-figures'
import type { Sheet } from '../../../domain/sheet/sheet'
import type { SheetFigures } from '../../../domain/sheet/sheet-figures'
import type { OpenJob } from '../../../state/open-job'
import type { Candidate } from '../compare/candidate'

export interface ToolProps {
  readonly open: OpenJob
  readonly sheet: Sheet
  readonly worked: SheetFigures | undefined
  readonly cut: CutFigures | undefined
  /** Arrows kept to be compared with the sheet's own, at most two. */
  readonly kept: readonly Candidate[]
  readonly onKeep: (candidate: Candidate) => void
}
