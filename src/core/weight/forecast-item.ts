import type { Mass } from '../quantity'
import { scaled } from '../quantity'
import type { Origin } from '../outcome'
import type { PredictedPart } from './predicted-part'
import type { ReadingError } from './scale-error'

/**
 * One line of a weight: a part, a glue joint, or a whole that was weighed (a cut shaft, a fletched arrow, a dry fit) and
 * then stands in place of everything inside it.
 */
export interface ForecastItem {
  readonly name: string
  readonly kind: 'read' | 'expected'
  readonly mean: Mass
  /** Independent of every other item, of this arrow and of all others. */
  readonly ownSd: Mass
  /** In common with every item of the same `sharedKey`: adds linearly inside an arrow, and moves all arrows together. */
  readonly sharedSd: Mass
  /** The lot whose mean is unknown, or the scale that read it. Without one, `sharedSd` counts as own. */
  readonly sharedKey?: string
  /** Degrees of freedom behind both standard deviations; none means known. */
  readonly degrees?: number
  readonly origin: Origin
  readonly ref?: string
}

interface Named {
  readonly name: string
  readonly sharedKey: string
  readonly ref?: string
}

/** So many pieces of one lot, not weighed yet. */
export const expectedItem = ({ name, sharedKey, ref }: Named, predicted: PredictedPart, pieces = 1): ForecastItem => ({
  name,
  kind: 'expected',
  mean: scaled(predicted.estimate.value, pieces),
  ownSd: scaled(predicted.ownSd, Math.sqrt(pieces)),
  sharedSd: scaled(predicted.sharedSd, pieces),
  sharedKey,
  ...(predicted.degrees === undefined ? {} : { degrees: predicted.degrees }),
  origin: predicted.pieces > 0 ? 'lot history' : 'catalogue',
  ...(ref === undefined ? {} : { ref }),
})

/** A weight off a scale; `sharedKey` names the scale. */
export const readItem = ({ name, sharedKey, ref }: Named, reading: Mass, error: ReadingError): ForecastItem => ({
  name,
  kind: 'read',
  mean: reading,
  ownSd: error.own,
  sharedSd: error.shared,
  sharedKey,
  origin: 'read',
  ...(ref === undefined ? {} : { ref }),
})
