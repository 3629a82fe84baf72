import type { Arrow } from '../arrow/arrow'
import { type Length, type Mass, scaled, sum } from '../quantity'

/** A part's weight at its own centre. */
export interface MassPoint {
  readonly name: string
  readonly mass: Mass
  readonly at: Length
}

/** The shaft first, then every piece, each at the middle of its interval. */
export const massPoints = ({ length, shaft, pieces }: Arrow): readonly [MassPoint, ...MassPoint[]] => [
  { name: 'shaft', mass: shaft.mass, at: scaled(sum(shaft.rear, length), 0.5) },
  ...pieces.map(({ name, mass, from, to }) => ({ name, mass, at: scaled(sum(from, to), 0.5) })),
]
