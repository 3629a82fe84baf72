/** The rear end of an arrow: the nock and, for a pin nock, its bushing. Inches forward from the throat. */
import { nockFitsBushing } from './fits'
import type { OptionOf } from './options'
import { momentOf, type PieceAt } from './piece-at'
import { type Sums, sumsOf } from './sums'

export interface Tail extends Sums {
  readonly nock: OptionOf<'nock'> | undefined
  readonly bushing: OptionOf<'bushing'> | undefined
  /** Throat to the rear end of the shaft. */
  readonly standoutIn: number
  readonly pieces: readonly PieceAt[]
  readonly momentGrIn: number
  /** Which choice it is among all of nock and bushing. */
  readonly index: number
}

export const tailsOf = (
  nocks: readonly (OptionOf<'nock'> | undefined)[],
  bushings: readonly (OptionOf<'bushing'> | undefined)[],
): readonly Tail[] =>
  nocks.flatMap((nock, i) =>
    bushings.flatMap((bushing, j) =>
      nockFitsBushing(nock?.item.record, bushing?.item.record) ? [tailOf(nock, bushing, i * bushings.length + j)] : [],
    ),
  )

function tailOf(nock: OptionOf<'nock'> | undefined, bushing: OptionOf<'bushing'> | undefined, index: number): Tail {
  const reach = nock?.item.record.standoutIn ?? 0
  const flange = bushing?.item.record.flangeIn ?? 0
  const standoutIn = reach + flange
  const pieces: PieceAt[] = []
  if (nock !== undefined) {
    pieces.push({ gr: nock.weightGr, fromIn: 0, toIn: reach + nock.item.record.plugIn, stiffening: 0 })
  }
  if (bushing !== undefined) {
    const toIn = standoutIn + bushing.item.record.insideIn
    pieces.push({ gr: bushing.weightGr, fromIn: standoutIn - flange, toIn, stiffening: 0 })
  }
  return { ...sumsOf([nock, bushing]), nock, bushing, standoutIn, pieces, momentGrIn: momentOf(pieces), index }
}
