/** Where a leader takes hold of a part: on its right edge, in the middle of what is seen of it. */
import type { ElevationPiece } from './elevation-piece'
import { KEPT_IN } from './true-scale'
import type { TrueScale } from './true-scale'

export interface Anchor {
  readonly x: number
  readonly y: number
}

/** @param pieces those of one line */
export function anchorOf(pieces: readonly ElevationPiece[], scale: TrueScale): Anchor | undefined {
  const [piece] = pieces.toSorted((a, b) => b.toIn - b.fromIn - (a.toIn - a.fromIn))
  if (piece === undefined) return undefined
  const { outline } = piece
  const half = piece.halfWidthMm * scale.pxPerMm
  const middle = (scale.y(piece.fromIn) + scale.y(piece.toIn)) / 2
  switch (outline.shape) {
    case 'shaft':
      return { x: half, y: scale.gap === null ? middle : scale.y(scale.gap.toIn + KEPT_IN / 2) }
    case 'fin':
      return { x: half * 0.62, y: middle }
    case 'broadhead': {
      const [tip, blades] = [scale.y(piece.toIn), scale.y(outline.bladeRearIn)]
      return { x: half * 0.55, y: tip + (blades - tip) * 0.55 }
    }
    case 'tube':
    case 'film':
    case 'nock':
    case 'field point':
      return { x: half * 0.9, y: middle }
  }
}
