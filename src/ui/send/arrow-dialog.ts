/** What each dialog about one arrow is given. */
import type { BenchArrow } from '../../domain/bench/bench'
import type { Sheet } from '../../domain/sheet/sheet'
import type { OpenJob } from '../../state/open-job'

export interface ArrowDialogProps {
  open: OpenJob
  sheet: Sheet
  arrow: BenchArrow
  onClose: () => void
}

/** Finished weights of any arrow of this trade, as a field asks for them. */
export const FINISHED_ASKED = { unit: 'gr', min: 200, max: 2000, decimals: 1 } as const

/** On the shop's own scale, where the bench asks about grams for grains: what is too little for an arrow is asked about, not refused. */
export const WEIGHED_ASKED = { ...FINISHED_ASKED, min: 1 } as const
