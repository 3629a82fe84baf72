import { outsideModel } from '../finding'
import { bounds, known, noAnswer, type Outcome, term, within } from '../outcome'
import { type Force, inches, inInches, inPoundsForce, type Length, poundsForce } from '../quantity'
import { SPINE_BOUNDS } from './static-spine'

const WOOD_LOAD = 2 // lbf at the middle [RHEINGANS]
const WOOD_SPAN = 26 // in [RHEINGANS]
const LOAD = 1.94 // lbf [F2031]
const SPAN = 28 // in [F2031]

/** What a shaft deflects the wood way for each inch it deflects the other way. */
const WOOD_PER_STATIC = (WOOD_LOAD * WOOD_SPAN ** 3) / (LOAD * SPAN ** 3)
const POUNDS_TIMES_DEFLECTION = 26 / WOOD_PER_STATIC // lbf·in; 31.4992

/** The wood convention's pounds over the whole of {@link SPINE_BOUNDS}. */
export const WOOD_SPINE_BOUNDS = bounds(
  poundsForce(POUNDS_TIMES_DEFLECTION / inInches(SPINE_BOUNDS.max)),
  poundsForce(POUNDS_TIMES_DEFLECTION / inInches(SPINE_BOUNDS.min)),
)

/**
 * Spine pounds in the wood convention of a shaft of known static spine.
 *
 *   pounds = 26/(deflection in inches under 2 lb on 26 in) = 31.4992/δ
 *
 * @returns the pounds, or `outside-model` when the deflection is not within {@link SPINE_BOUNDS}
 *
 * Source: [RHEINGANS] for the convention, [F2031] for δ; the two deflections are as P·S³.
 */
export function woodSpineFromSpine(deflection: Length): Outcome<Force> {
  if (!within(deflection, SPINE_BOUNDS)) return noAnswer(outsideModel('static spine', deflection, SPINE_BOUNDS, 'in'))
  const pounds = poundsForce(POUNDS_TIMES_DEFLECTION / inInches(deflection))
  return known(pounds, {
    equation: 'pounds = 26/(δ·(2·26³)/(1.94·28³))',
    inputs: [term('static spine', deflection, 'in')],
    result: [term('wood spine', pounds, 'lbf')],
    source: ['RHEINGANS', 'F2031'],
  })
}

/** Static spine of a wood shaft of so many spine pounds: {@link woodSpineFromSpine} turned round. */
export function spineFromWoodSpine(pounds: Force): Outcome<Length> {
  if (!within(pounds, WOOD_SPINE_BOUNDS)) {
    return noAnswer(outsideModel('wood spine', pounds, WOOD_SPINE_BOUNDS, 'lbf'))
  }
  const deflection = inches(POUNDS_TIMES_DEFLECTION / inPoundsForce(pounds))
  return known(deflection, {
    equation: 'δ = 26/(pounds·(2·26³)/(1.94·28³))',
    inputs: [term('wood spine', pounds, 'lbf')],
    result: [term('static spine', deflection, 'in')],
    source: ['RHEINGANS', 'F2031'],
  })
}
