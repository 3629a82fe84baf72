import { bounds, known, noAnswer, type Outcome, term, within } from '../outcome'
import { outsideModel } from '../finding'
import { type FlexuralRigidity, inches, type Length, metres, newtonSquareMetres, poundsForce } from '../quantity'

const SPAN = inches(28) // supports [F2031]
const LOAD = poundsForce(1.94) // at the middle, 880 g [F2031]
const RIGIDITY_TIMES_DEFLECTION = (LOAD * SPAN ** 3) / 48 // N·m³; 887.2267 lbf·in² × in

/** The static spines shafts are sold in, and a good way beyond. */
export const SPINE_BOUNDS = bounds(inches(0.02), inches(3))
/** The same range as rigidities. */
export const RIGIDITY_BOUNDS = bounds(
  newtonSquareMetres(RIGIDITY_TIMES_DEFLECTION / SPINE_BOUNDS.max),
  newtonSquareMetres(RIGIDITY_TIMES_DEFLECTION / SPINE_BOUNDS.min),
)

/**
 * Flexural rigidity of a shaft from its static spine, the same throughout; cutting a shaft does not change it.
 *
 *   EI = P·S³/(48·δ),   P = 1.94 lbf, S = 28 in
 *
 * @returns the rigidity, or `outside-model` when the deflection is not within {@link SPINE_BOUNDS}
 *
 * Source: [F2031] for load and span; the simply supported beam of the handbooks.
 * Error: the shaft's own weight and its overhang are not in it; both are in the standard's reading.
 */
export function rigidityFromSpine(deflection: Length): Outcome<FlexuralRigidity> {
  if (!within(deflection, SPINE_BOUNDS)) return noAnswer(outsideModel('static spine', deflection, SPINE_BOUNDS, 'in'))
  const rigidity = newtonSquareMetres(RIGIDITY_TIMES_DEFLECTION / deflection)
  return known(rigidity, {
    equation: 'EI = P·S³/(48·δ)',
    inputs: [
      term('static spine', deflection, 'in'),
      term('load', LOAD, 'lbf', 'constant', 'F2031'),
      term('span', SPAN, 'in', 'constant', 'F2031'),
    ],
    result: [term('flexural rigidity', rigidity, 'N·m²')],
    source: ['F2031'],
  })
}

/** Static spine that a rigidity corresponds to: {@link rigidityFromSpine} turned round. */
export function spineFromRigidity(rigidity: FlexuralRigidity): Outcome<Length> {
  if (!within(rigidity, RIGIDITY_BOUNDS)) {
    return noAnswer(outsideModel('flexural rigidity', rigidity, RIGIDITY_BOUNDS, 'N·m²'))
  }
  const deflection = metres(RIGIDITY_TIMES_DEFLECTION / rigidity)
  return known(deflection, {
    equation: 'δ = P·S³/(48·EI)',
    inputs: [
      term('flexural rigidity', rigidity, 'N·m²'),
      term('load', LOAD, 'lbf', 'constant', 'F2031'),
      term('span', SPAN, 'in', 'constant', 'F2031'),
    ],
    result: [term('static spine', deflection, 'in')],
    source: ['F2031'],
  })
}
