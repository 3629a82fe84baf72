import type { Finding } from '../finding'
import { bounds, known, type Outcome, term } from '../outcome'
import { difference, inches, type Length, scaled, sum } from '../quantity'
import { outside, refusal } from '../refusal'
import { CLEARANCE_BOUNDS, type ClearanceRules } from './clearance-rules'
import type { ClearanceName } from './findings'
import { type FullDraw, placeProblems } from './full-draw'
import { BLADES_AHEAD_BOUNDS } from './shortest-clear'

/** One clearance: what there is of it, below 0 where two things meet, and what there must be. */
export interface Clearance {
  readonly what: ClearanceName
  readonly has: Length
  readonly needs: Length
}

/** The arrow and the bow as far as they are known; what is not given is not judged. Sideways lengths from the axis. */
export interface ClearanceInputs {
  /** Throat to shaft front. */
  readonly length: Length
  readonly fullDraw: FullDraw
  readonly rules: ClearanceRules
  /** Rear of the blades ahead of the shaft front. */
  readonly bladesAhead?: Length
  readonly cuttingWidth?: Length
  readonly toRiserSide?: Length
  readonly vaneTail?: Length
  /** From the axis to the vanes' outermost edge, on the side of the cable. */
  readonly vaneReach?: Length
  readonly toCable?: Length
}

export const CLEARANCE_INPUT_BOUNDS = Object.freeze({
  length: bounds(inches(4), inches(80)),
  sideways: bounds(inches(0), inches(10)),
  cuttingWidth: bounds(inches(0), inches(6)),
  vaneTail: bounds(inches(-2), inches(20)),
})

/**
 * Every clearance that can be told, against the shop's rules.
 *
 * @returns them in the order of the arrow, front first; `clearance-short` for each that falls short; or `outside-model`
 *
 * Source: [CP] for the distances.
 */
export function clearances(inputs: ClearanceInputs): Outcome<readonly Clearance[]> {
  const refused = refusal(inputProblems(inputs))
  if (refused) return refused
  const { length, fullDraw: at, rules, bladesAhead, cuttingWidth, toRiserSide, vaneTail, vaneReach, toCable } = inputs
  const list: Clearance[] = [
    { what: 'shaft front ahead of the rest', has: difference(length, at.rest.at), needs: rules.frontAheadOfRest },
  ]
  if (bladesAhead !== undefined) {
    const blades = sum(length, bladesAhead)
    const needs = rules.bladesAheadOfRiser
    list.push({ what: 'blades ahead of the riser', has: difference(blades, at.riserFront.at), needs })
    if (at.hand) list.push({ what: 'blades ahead of the hand', has: difference(blades, at.hand.at), needs })
  }
  if (cuttingWidth !== undefined && toRiserSide !== undefined) {
    const has = difference(toRiserSide, scaled(cuttingWidth, 0.5))
    list.push({ what: 'blades off the riser', has, needs: rules.bladesOffRiser })
  }
  if (vaneReach !== undefined && toCable !== undefined) {
    list.push({ what: 'vane off the cable', has: difference(toCable, vaneReach), needs: rules.vaneOffCable })
  }
  if (vaneTail !== undefined) {
    list.push({ what: 'vane tail ahead of the throat', has: vaneTail, needs: rules.vaneTail })
  }
  return known(
    list,
    {
      equation: 'what there is, against the least there must be',
      inputs: [
        term('arrow length', length, 'in'),
        term('rest', at.rest.at, 'in'),
        term('riser front', at.riserFront.at, 'in'),
        ...Object.entries({ 'reach of the vane': vaneReach, 'arrow to cable': toCable }).flatMap(([name, told]) =>
          told === undefined ? [] : [term(name, told, 'in')],
        ),
        ...list.map(({ what, needs }) => term(`${what}, least`, needs, 'in', 'shop rule')),
      ],
      result: list.map(({ what, has }) => term(what, has, 'in')),
      source: ['CP'],
    },
    list.filter(({ has, needs }) => has < needs).map((short): Finding => ({ code: 'clearance-short', ...short })),
  )
}

function inputProblems(inputs: ClearanceInputs): readonly Finding[] {
  const { length, rules, bladesAhead, cuttingWidth, toRiserSide, vaneTail, vaneReach, toCable } = inputs
  const { length: lengths, sideways, cuttingWidth: widths, vaneTail: tails } = CLEARANCE_INPUT_BOUNDS
  const told = [
    ['blades ahead of the shaft front', bladesAhead, BLADES_AHEAD_BOUNDS],
    ['cutting width', cuttingWidth, widths],
    ['arrow to riser', toRiserSide, sideways],
    ['vane tail', vaneTail, tails],
    ['reach of the vane', vaneReach, sideways],
    ['arrow to cable', toCable, sideways],
  ] as const
  return [
    ...outside('arrow length', length, lengths, 'in'),
    ...placeProblems(inputs.fullDraw),
    ...Object.values(rules).flatMap((rule) => outside('least clearance', rule, CLEARANCE_BOUNDS, 'in')),
    ...told.flatMap(([input, at, range]) => (at === undefined ? [] : outside(input, at, range, 'in'))),
  ]
}
