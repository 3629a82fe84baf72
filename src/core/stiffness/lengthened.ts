import type { Arrow } from '../arrow/arrow'
import { difference, type Length, scaled, sum } from '../quantity'

/**
 * The same build cut longer (or, below 0, shorter): shaft weight goes with its length, and the parts of the front half
 * move with the shaft front.
 *
 * @param by must leave some shaft; a shaft without length is found out by the models
 */
export function lengthened(arrow: Arrow, by: Length): Arrow {
  const { length, shaft, pieces } = arrow
  const bare = difference(length, shaft.rear)
  return {
    length: sum(length, by),
    shaft: { ...shaft, mass: scaled(shaft.mass, sum(bare, by) / bare) },
    pieces: pieces.map((piece) =>
      piece.from + piece.to > length ? { ...piece, from: sum(piece.from, by), to: sum(piece.to, by) } : piece,
    ),
  }
}
