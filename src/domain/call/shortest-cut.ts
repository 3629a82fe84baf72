/**
 * How short a shaft may be cut, nock end to point end, to stay clear at full draw by the shop's own distances. Until a
 * head and a front are chosen the blades are taken to begin at the shaft front, which errs on the safe side.
 */
import { c2cOf } from '../../core/cut/arrow-length'
import type { ClearanceRules } from '../../core/cut/clearance-rules'
import type { Landmark } from '../../core/cut/findings'
import { shortestClear } from '../../core/cut/shortest-clear'
import { type Outcome, known, term } from '../../core/outcome'
import { type Length, inches } from '../../core/quantity'
import type { Rules } from '../shop/rules'
import { traced } from './follows'
import type { FullDrawTold } from './full-draw-told'

export interface ShortestCut {
  /** Carbon to carbon. */
  readonly c2c: Length
  /** Throat to shaft front. */
  readonly length: Length
  readonly by: Landmark
  readonly isEstimated: boolean
}

/** From the throat to the rear of the shaft, common practice, no source [CP]. */
export const NOCK_STANDOUT = inches(0.55)

export const clearanceRules = ({ clearance }: Rules): ClearanceRules => ({
  frontAheadOfRest: inches(clearance.frontAheadOfRestIn),
  bladesAheadOfRiser: inches(clearance.bladesAheadOfRiserIn),
  bladesOffRiser: inches(clearance.bladesOffRiserIn),
  vaneOffCable: inches(clearance.vaneOffCableIn),
  vaneTail: inches(clearance.vaneTailIn),
})

/** @param hasBlades false where only field points are shot */
export function shortestCut(at: FullDrawTold, rules: Rules, hasBlades: boolean): Outcome<ShortestCut> {
  const { places } = at
  if (!places.ok) return places
  const clear = shortestClear(places.value, clearanceRules(rules), hasBlades ? inches(0) : undefined)
  if (!clear.ok) return clear
  const { length, setBy } = clear.value
  const c2c = c2cOf(length, { nockStandout: NOCK_STANDOUT, shoulder: inches(0) })
  const place = setBy === 'rest' ? places.value.rest : places.value.riserFront
  const isEstimated = place.how === 'estimated'
  const working = traced(clear.derivation, {
    rest: { origin: 'computed' },
    'riser front': { origin: 'computed' },
    'blades ahead of the shaft front': { origin: 'assumed', ref: 'CP' },
  })
  return known(
    { c2c, length, by: setBy, isEstimated },
    {
      equation: 'C2C = arrow length − throat to shaft rear',
      inputs: [
        term('shortest arrow length', length, 'in', 'computed'),
        term('throat to shaft rear, at the nock', NOCK_STANDOUT, 'in', 'assumed', 'CP'),
      ],
      result: [term('shortest C2C', c2c, 'in')],
      source: ['F1435'],
      ...(isEstimated
        ? { note: 'Estimated; a nocked arrow marked at rest and riser front at full draw is better.' }
        : {}),
      steps: [working, places.derivation],
    },
  )
}
