import { bounds, known, type Outcome, term } from '../outcome'
import { difference, greatest, inches, type Length, sum } from '../quantity'
import { outside, refusal } from '../refusal'
import { CLEARANCE_BOUNDS, type ClearanceRules } from './clearance-rules'
import type { Landmark } from './findings'
import { type FullDraw, placeProblems } from './full-draw'

/** Where the rear of the blades stands ahead of the shaft front; below 0 it stands behind. */
export const BLADES_AHEAD_BOUNDS = bounds(inches(-5), inches(10))

export interface ShortestClear {
  /** Throat to shaft front. */
  readonly length: Length
  readonly setBy: Landmark
}

/**
 * The shortest arrow whose shaft front and blades stay clear at full draw.
 *
 *   L ≥ rest + least ahead of the rest,   L + blades ahead of the shaft front ≥ riser front (and hand) + least ahead
 *
 * Brace height plays no part in it.
 *
 * @param bladesAhead rear of the blades ahead of the shaft front; absent where the head has none
 * @returns the length and what sets it, or `outside-model`
 *
 * Source: [CP] for the distances.
 * Error: that of the marks; an archer who creeps forward or overdraws moves all of them.
 */
export function shortestClear(at: FullDraw, rules: ClearanceRules, bladesAhead?: Length): Outcome<ShortestClear> {
  const refused = refusal([
    ...placeProblems(at),
    ...outside('shaft front ahead of the rest', rules.frontAheadOfRest, CLEARANCE_BOUNDS, 'in'),
    ...outside('blades ahead of the riser', rules.bladesAheadOfRiser, CLEARANCE_BOUNDS, 'in'),
    ...(bladesAhead === undefined
      ? []
      : outside('blades ahead of the shaft front', bladesAhead, BLADES_AHEAD_BOUNDS, 'in')),
  ])
  if (refused) return refused
  const pastRest = sum(at.rest.at, rules.frontAheadOfRest)
  const bladesPast = (place: Length, ahead: Length) => difference(sum(place, rules.bladesAheadOfRiser), ahead)
  const asked: readonly (readonly [Landmark, Length])[] = [
    ['rest', pastRest],
    ...(bladesAhead === undefined ? [] : [['riser front', bladesPast(at.riserFront.at, bladesAhead)] as const]),
    ...(bladesAhead === undefined || at.hand === undefined
      ? []
      : [['hand', bladesPast(at.hand.at, bladesAhead)] as const]),
  ]
  const length = greatest(pastRest, ...asked.map(([, least]) => least))
  const setBy = asked.find(([, least]) => least === length)![0]
  return known(
    { length, setBy },
    {
      equation: 'L ≥ rest + least; L ≥ riser front (hand) + least − blades ahead of the shaft front',
      inputs: [
        term('rest', at.rest.at, 'in'),
        term('riser front', at.riserFront.at, 'in'),
        ...(at.hand === undefined ? [] : [term('hand', at.hand.at, 'in')]),
        term('shaft front ahead of the rest', rules.frontAheadOfRest, 'in', 'shop rule'),
        term('blades ahead of the riser', rules.bladesAheadOfRiser, 'in', 'shop rule'),
        ...(bladesAhead === undefined ? [] : [term('blades ahead of the shaft front', bladesAhead, 'in')]),
      ],
      result: [term('shortest arrow length', length, 'in')],
      source: ['CP'],
    },
  )
}
