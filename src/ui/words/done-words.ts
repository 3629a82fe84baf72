/** What is said at the bench when a step is closed, passed, or taken back. */
import type { DataPoint } from '../../domain/bench/data-points'
import { pointInLine, stepWords } from './bench-words'

/** @param no absent: the whole set */
export const doneWords = (step: string, no?: number): string =>
  `${no === undefined ? 'The set' : `No. ${no}`}: ${stepWords(step).title.toLowerCase()} done.`

export const takenBackWords = (step: string, no?: number): string =>
  `Taken back: ${no === undefined ? 'the set' : `no. ${no}`}, ${stepWords(step).title.toLowerCase()}. It is to be done again.`

export const withdrawnWords = (no: number, point: DataPoint, raw: string): string =>
  `Withdrawn: no. ${no}, ${pointInLine(point)} ${raw}. It stays in the history.`

export const NOTHING_TO_UNDO =
  'Nothing to undo at this step for this arrow. Choose the arrow in the set, or correct an earlier reading in its history below.'

export const pastHoldWords = (hold: string): string =>
  `Hold point: “${hold}” comes first, for the whole set. Going past it is a deviation, to be decided before signing off.`

/** *Done* was pressed over an entry. */
export const untakenWords = (text: string): string =>
  `“${text.slice(0, 40)}” is typed and not taken yet: take it, or clear it first.`
