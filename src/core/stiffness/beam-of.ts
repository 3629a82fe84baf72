import type { Arrow } from '../arrow/arrow'
import { type BeamInput, beamInput } from './beam-mesh'
import { stiffeningOf } from './tube-rigidity'

/** An arrow as the beam kernels take it (SI plain numbers). */
export function beamOf({ length, shaft, pieces }: Arrow): BeamInput {
  const beam = beamInput(pieces.length)
  beam.length = length
  beam.rigidity = shaft.rigidity
  beam.shaftMass = shaft.mass
  beam.shaftRear = shaft.rear
  pieces.forEach((piece, i) => {
    beam.from[i] = piece.from
    beam.to[i] = piece.to
    beam.mass[i] = piece.mass
    beam.stiffening[i] = piece.bonded === undefined ? 0 : stiffeningOf(piece.bonded)
  })
  return beam
}
