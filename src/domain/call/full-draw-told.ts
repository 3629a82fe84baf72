/**
 * Where rest and riser front stand along the arrow at full draw, as far as the call can tell: from the marks of a nocked
 * arrow, otherwise from the draw length and where they stand to the pivot, told or typical.
 */
import { DRAW_LENGTH_ADDS } from '../../core/bow/power-stroke'
import type { FullDraw } from '../../core/cut/full-draw'
import { fullDraw } from '../../core/cut/full-draw'
import type { OriginNote, Outcome } from '../../core/outcome'
import { type Length, difference, inches, sum } from '../../core/quantity'
import type { Answers } from './answers'
import type { CallBow } from './call-bow'
import type { Origins } from './follows'
import { tracedOutcome } from './follows'
import { toldNumber, toldText } from './told'

export interface FullDrawTold {
  readonly places: Outcome<FullDraw>
  readonly origins: Origins
  /** Throat to rest from the draw length alone, whatever was marked. */
  readonly restEstimate: Length
  readonly restIsTold: boolean
  /** Whether anything at all was said of draw length or marks. */
  readonly isTold: boolean
}

// Where they commonly stand ahead of the pivot, common practice, no source [CP]: a shelf is at the pivot.
const REST_AHEAD = inches(0.5)
const SHELF_AHEAD = inches(0)
const RISER_AHEAD = inches(1.75)
const TOLD: OriginNote = { origin: 'answered' }
const ASSUMED: OriginNote = { origin: 'assumed', ref: 'CP' }

export function fullDrawTold(answers: Answers, bow: CallBow): FullDrawTold {
  const marked = { rest: toldNumber(answers, 'markAtRestIn'), riser: toldNumber(answers, 'markAtRiserIn') }
  const told = {
    rest: toldNumber(answers, 'restAheadOfPivotIn'),
    riser: toldNumber(answers, 'riserFrontAheadOfPivotIn'),
  }
  const isShelf = toldText(answers, 'restKind') === 'shelf' || bow.kind !== 'compound'
  const ahead = {
    rest: told.rest === undefined ? (isShelf ? SHELF_AHEAD : REST_AHEAD) : inches(told.rest),
    riser: told.riser === undefined ? RISER_AHEAD : inches(told.riser),
  }
  const origins: Origins = {
    'draw length': bow.origins['draw length'] ?? ASSUMED,
    'mark at the rest': TOLD,
    'mark at the riser front': TOLD,
    'rest ahead of the pivot': told.rest === undefined ? ASSUMED : TOLD,
    'riser front ahead of the pivot': told.riser === undefined ? ASSUMED : TOLD,
  }
  const places = fullDraw({
    marks: {
      ...(marked.rest === undefined ? {} : { rest: inches(marked.rest) }),
      ...(marked.riser === undefined ? {} : { 'riser front': inches(marked.riser) }),
    },
    drawLength: bow.drawLength,
    aheadOfPivot: { rest: ahead.rest, 'riser front': ahead.riser },
  })
  return {
    places: tracedOutcome(places, origins),
    origins,
    restEstimate: sum(difference(bow.drawLength, DRAW_LENGTH_ADDS), ahead.rest),
    restIsTold: told.rest !== undefined,
    isTold: marked.rest !== undefined || toldNumber(answers, 'drawLengthIn') !== undefined,
  }
}
