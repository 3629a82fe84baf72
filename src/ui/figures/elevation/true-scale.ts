/**
 * The scale of the elevation: front and rear at one true scale, along and across, with a stretch of plain shaft taken out
 * so that both can be seen.
 */
import type { ElevationPiece } from './elevation-piece'

const MM_PER_IN = 25.4 // exact [SP811]
const NOCK_EARS_IN = 0.22 // drawn behind the throat
/** Plain shaft left in sight on each side of the break, inches. */
export const KEPT_IN = 0.7
const WORTH_BREAKING_IN = 2.5
const BREAK_PX = 14
const MARGIN_PX = 14

export interface TrueScale {
  readonly pxPerMm: number
  /** From the top of the drawing to a position, inches from the throat. */
  readonly y: (positionIn: number) => number
  /** Rear and front end of the stretch that is left out. */
  readonly gap: { readonly fromIn: number; readonly toIn: number } | null
  /** Half the width that the widest part takes. */
  readonly halfWidthPx: number
}

/** @returns nothing when there is no shaft to draw on */
export function trueScale(pieces: readonly ElevationPiece[], heightPx: number): TrueScale | undefined {
  const shaft = pieces.find(({ outline }) => outline.shape === 'shaft')
  if (shaft === undefined || !(heightPx > 4 * MARGIN_PX)) return undefined
  const rear = Math.min(...pieces.map(({ fromIn }) => fromIn)) - NOCK_EARS_IN
  const tip = Math.max(...pieces.map(({ toIn }) => toIn))
  const gap = plainStretch(shaft, pieces)
  const leftOut = gap === null ? 0 : gap.toIn - gap.fromIn
  const breakPx = gap === null ? 0 : BREAK_PX

  const pxPerMm = (heightPx - 2 * MARGIN_PX - breakPx) / ((tip - rear - leftOut) * MM_PER_IN)
  const y = (at: number) => {
    const behindGap = gap !== null && at <= (gap.fromIn + gap.toIn) / 2
    const shown = tip - at - (behindGap ? leftOut : 0)
    return MARGIN_PX + shown * MM_PER_IN * pxPerMm + (behindGap ? breakPx : 0)
  }
  return { pxPerMm, y, gap, halfWidthPx: Math.max(...pieces.map(({ halfWidthMm }) => halfWidthMm)) * pxPerMm }
}

/** The longest stretch of shaft with nothing on or in it, less what is kept in sight at its ends. */
function plainStretch(shaft: ElevationPiece, pieces: readonly ElevationPiece[]): TrueScale['gap'] {
  const others = pieces.filter((piece) => piece !== shaft).toSorted((a, b) => a.fromIn - b.fromIn)
  let best = { fromIn: 0, toIn: 0 }
  let end = shaft.fromIn
  for (const { fromIn, toIn } of [...others, { fromIn: shaft.toIn, toIn: shaft.toIn }]) {
    if (fromIn - end > best.toIn - best.fromIn) best = { fromIn: end, toIn: Math.min(fromIn, shaft.toIn) }
    end = Math.max(end, toIn)
  }
  if (best.toIn - best.fromIn < WORTH_BREAKING_IN) return null
  return { fromIn: best.fromIn + KEPT_IN, toIn: best.toIn - KEPT_IN }
}
