/**
 * What the next piece of a lot is expected to weigh: the catalogue's word until pieces were weighed, then ever more the
 * lot's own. The sheet's forecast asks the same model the same way. A shaft is asked about at its raw length.
 */
import type { Outcome } from '../../core/outcome'
import { grains } from '../../core/quantity'
import type { PredictedPart } from '../../core/weight/predicted-part'
import { predictedPart } from '../../core/weight/predicted-part'
import { catalogueWeight } from './catalogue-weight'
import type { LotView } from './lot-view'
import type { Part } from './part'

export const lotExpectation = (part: Part, view: Pick<LotView, 'weighed'> | undefined): Outcome<PredictedPart> =>
  predictedPart(
    catalogueWeight(part, part.kind === 'shaft' ? part.rawLengthIn : 0),
    (view?.weighed ?? [])
      .filter(({ what }) => what === 'weight')
      .map(({ weightGr, pieces }) => ({ mass: grains(weightGr), pieces })),
  )
