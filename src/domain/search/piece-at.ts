/** A weight spread evenly over an interval; gr and in, forward positive from the group's own origin. */
export interface PieceAt {
  readonly gr: number
  readonly fromIn: number
  readonly toIn: number
  /** E·I of the tube it is bonded as, N·m²; 0 where none is. */
  readonly stiffening: number
}

/** First moment about the origin, gr·in. */
export const momentOf = (pieces: readonly PieceAt[]) =>
  pieces.reduce((sum, { gr, fromIn, toIn }) => sum + (gr * (fromIn + toIn)) / 2, 0)
