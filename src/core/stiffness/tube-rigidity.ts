import type { BondedTube } from '../arrow/arrow'
import type { Finding } from '../finding'
import { bounds, known, type Outcome, term } from '../outcome'
import { type FlexuralRigidity, gigapascals, millimetres, newtonSquareMetres } from '../quantity'
import { outside, refusal } from '../refusal'

export const TUBE_BOUNDS = Object.freeze({
  diameter: bounds(millimetres(0), millimetres(40)),
  youngsModulus: bounds(gigapascals(0), gigapascals(1000)),
})

/** E·π(D⁴ − d⁴)/64, N·m² (quantities are SI inside). For tubes already found to be sound. */
export const stiffeningOf = ({ outerDiameter, innerDiameter, youngsModulus }: BondedTube): number =>
  (youngsModulus * Math.PI * (outerDiameter ** 4 - innerDiameter ** 4)) / 64

/** What is wrong with a bonded tube, if anything. */
export const tubeProblems = (tube: BondedTube, part: string): readonly Finding[] => {
  const { outerDiameter: outer, innerDiameter: bore, youngsModulus } = tube
  return [
    ...outside(`outer diameter of ${part}`, outer, TUBE_BOUNDS.diameter, 'mm'),
    ...outside(`inner diameter of ${part}`, bore, TUBE_BOUNDS.diameter, 'mm'),
    ...(bore > outer ? [{ code: 'bore-wider-than-tube', part, bore, outer } as const] : []),
    ...outside(`modulus of ${part}`, youngsModulus, TUBE_BOUNDS.youngsModulus, 'GPa'),
  ]
}

/**
 * What a bonded post, sleeve or collar adds to the shaft's rigidity.
 *
 *   EI = E·π(D⁴ − d⁴)/64
 *
 * @returns the rigidity; `outside-model` when a diameter or the modulus is not within {@link TUBE_BOUNDS};
 * `bore-wider-than-tube` when it is
 *
 * Source: second moment of a ring, any handbook; moduli [HANDBOOK_E].
 * Error: a bond that gives way adds less; the glue line itself is not in it.
 */
export function tubeRigidity(tube: BondedTube): Outcome<FlexuralRigidity> {
  const refused = refusal(tubeProblems(tube, 'tube'))
  if (refused) return refused
  const rigidity = newtonSquareMetres(stiffeningOf(tube))
  return known(rigidity, {
    equation: 'EI = E·π·(D⁴ − d⁴)/64',
    inputs: [
      term('outer diameter', tube.outerDiameter, 'mm'),
      term('inner diameter', tube.innerDiameter, 'mm'),
      term("Young's modulus", tube.youngsModulus, 'GPa'),
    ],
    result: [term('flexural rigidity', rigidity, 'N·m²')],
    source: ['HANDBOOK_E'],
  })
}
