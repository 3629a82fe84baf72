import type { Arrow, Piece } from '../arrow/arrow'
import type { Finding } from '../finding'
import { bounds } from '../outcome'
import { grains, inches } from '../quantity'
import { outside } from '../refusal'
import { RIGIDITY_BOUNDS } from './static-spine'
import { tubeProblems } from './tube-rigidity'

/** Where the beam models hold: far beyond any arrow, and short of where numbers lose their digits. */
export const BEAM_BOUNDS = Object.freeze({
  length: bounds(inches(4), inches(80)),
  shaftRear: bounds(inches(-6), inches(12)),
  shaftWeight: bounds(grains(10), grains(10_000)),
  rigidity: RIGIDITY_BOUNDS,
  partWeight: bounds(grains(0), grains(10_000)),
  partPlace: bounds(inches(-24), inches(120)),
})

/** What keeps the beam models from answering for an arrow: nothing, or each thing that is wrong with it. */
export const arrowProblems = ({ length, shaft, pieces }: Arrow): readonly Finding[] => [
  ...outside('arrow length', length, BEAM_BOUNDS.length, 'in'),
  ...outside('shaft rear', shaft.rear, BEAM_BOUNDS.shaftRear, 'in'),
  ...(shaft.rear >= length ? [{ code: 'shaft-has-no-length', rear: shaft.rear, front: length } as const] : []),
  ...outside('shaft weight', shaft.mass, BEAM_BOUNDS.shaftWeight, 'gr'),
  ...outside('flexural rigidity', shaft.rigidity, BEAM_BOUNDS.rigidity, 'N·m²'),
  ...pieces.flatMap(pieceProblems),
]

const pieceProblems = ({ name, mass, from, to, bonded }: Piece): readonly Finding[] => [
  ...outside(`weight of ${name}`, mass, BEAM_BOUNDS.partWeight, 'gr'),
  ...outside(`rear end of ${name}`, from, BEAM_BOUNDS.partPlace, 'in'),
  ...outside(`front end of ${name}`, to, BEAM_BOUNDS.partPlace, 'in'),
  ...(from > to ? [{ code: 'part-runs-backwards', part: name, from, to } as const] : []),
  ...(bonded === undefined ? [] : tubeProblems(bonded, name)),
]
