/** Rows in the order their leaders take hold, front first, so that no two leaders cross; what is not drawn comes last. */
import { anchorOf } from './anchor-of'
import type { ElevationPiece } from './elevation-piece'
import { trueScale } from './true-scale'

const ANY_HEIGHT_PX = 600

export function rowsByPosition<R extends { readonly id: string }>(
  rows: readonly R[],
  pieces: readonly ElevationPiece[],
): readonly R[] {
  const scale = trueScale(pieces, ANY_HEIGHT_PX)
  if (scale === undefined) return rows
  const heights = new Map(
    rows.map(({ id }) => {
      const anchor = anchorOf(
        pieces.filter((piece) => piece.id === id),
        scale,
      )
      return [id, anchor?.y ?? ANY_HEIGHT_PX]
    }),
  )
  return rows.toSorted((a, b) => heights.get(a.id)! - heights.get(b.id)!)
}
