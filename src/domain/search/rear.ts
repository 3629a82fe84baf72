/** What lies on the shaft behind the hand: the vanes with their glue, and the wrap under them. */
import type { OptionOf } from './options'
import { momentOf, type PieceAt } from './piece-at'
import { glueOf, type Sums, sumsOf } from './sums'
import type { SearchProblem } from './wishes'

export interface Rear extends Sums {
  readonly vanes: OptionOf<'vane' | 'feather'> | undefined
  readonly wrap: OptionOf<'wrap'> | undefined
  /** Vanes and their glue, inches forward from the throat. */
  readonly pieces: readonly PieceAt[]
  readonly momentGrIn: number
  /** The wrap begins at the rear end of the shaft, wherever the nock puts that. */
  readonly wrapGr: number
  readonly wrapIn: number
  /** Front of the vanes, from the throat. */
  readonly vaneFrontIn: number
  readonly index: number
}

export const rearsOf = (
  problem: SearchProblem,
  vanes: readonly (OptionOf<'vane' | 'feather'> | undefined)[],
  wraps: readonly (OptionOf<'wrap'> | undefined)[],
): readonly Rear[] =>
  vanes.flatMap((vane, i) => wraps.map((wrap, j) => rearOf(problem, vane, wrap, i * wraps.length + j)))

function rearOf(
  problem: SearchProblem,
  vanes: OptionOf<'vane' | 'feather'> | undefined,
  wrap: OptionOf<'wrap'> | undefined,
  index: number,
): Rear {
  const { vaneTailIn } = problem.build
  const glue = glueOf(problem, 'vanes', vanes !== undefined)
  const lengthIn = vanes?.item.record.lengthIn ?? 0
  const vaneFrontIn = vaneTailIn + lengthIn
  const middle = vaneTailIn + lengthIn / 2
  const pieces: PieceAt[] = []
  if (vanes !== undefined) {
    pieces.push({ gr: vanes.weightGr, fromIn: vaneTailIn, toIn: vaneFrontIn, stiffening: 0 })
    pieces.push({ gr: glue.gr, fromIn: middle, toIn: middle, stiffening: 0 })
  }
  return {
    ...sumsOf([vanes, wrap], [glue]),
    vanes,
    wrap,
    pieces,
    momentGrIn: momentOf(pieces),
    wrapGr: wrap?.weightGr ?? 0,
    wrapIn: wrap?.item.record.lengthIn ?? 0,
    vaneFrontIn,
    index,
  }
}
