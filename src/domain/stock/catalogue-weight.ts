/** What the catalogue says of a part's weight: nominal, tolerance, and how much of the scatter is piece to piece. */
import type { Mass, Ratio } from '../../core/quantity'
import { grains, scaled } from '../../core/quantity'
import { TYPICAL_SPREAD } from '../../core/weight/typical-spread'
import type { TypicalSpread } from '../../core/weight/typical-spread'
import type { Part } from './part'

export const UNIFORM = Math.sqrt(3) // a ± tolerance is a uniform spread of t/√3 [TN1297]

const spreadOf = (part: Part): TypicalSpread => {
  switch (part.kind) {
    case 'shaft':
      return TYPICAL_SPREAD[part.straightnessIn <= MATCHED ? 'matched shaft' : 'unsorted shaft']
    case 'vane':
    case 'feather':
      return TYPICAL_SPREAD.vane
    case 'nock':
      return TYPICAL_SPREAD[part.fit === 'lighted' ? 'lighted nock' : 'nock']
    case 'wrap':
      return TYPICAL_SPREAD.wrap
    case 'broadhead':
      return TYPICAL_SPREAD.broadhead
    case 'field point':
      return TYPICAL_SPREAD['field point']
    case 'collar':
    case 'sleeve':
    case 'footing':
      return TYPICAL_SPREAD.collar
    case 'insert':
    case 'half-out':
    case 'outsert':
    case 'rear weight':
    case 'adapter':
    case 'bushing':
    case 'glue':
      return TYPICAL_SPREAD.insert
  }
}
const MATCHED = 0.001 // in: the best straightness class is sold weight-matched, common practice, no source [CP]

export interface CatalogueFigures {
  readonly nominal: Mass
  readonly tolerance: Mass
  readonly ownShare: Ratio
}

/** @param lengthIn the length a shaft is asked about: its C2C, or its raw length */
export function catalogueWeight(part: Part, lengthIn: number): CatalogueFigures {
  const typical = spreadOf(part)
  const tolerance = part.toleranceGr > 0 ? grains(part.toleranceGr) : scaled(typical.sd, UNIFORM)
  if (part.kind !== 'shaft') {
    return { nominal: grains(part.weightGr), tolerance, ownShare: typical.ownShare }
  }
  const share = lengthIn / part.rawLengthIn
  return {
    nominal: grains(part.weightPerInchGr * lengthIn),
    tolerance: scaled(tolerance, share),
    ownShare: typical.ownShare,
  }
}
