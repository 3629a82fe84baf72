import { DRAW_WEIGHT_BOUNDS } from '../energy/grains-per-pound'
import { bounds, known, type Outcome, term } from '../outcome'
import { type Force, grains, type Mass, scaled } from '../quantity'
import { outside, refusal } from '../refusal'

export const NOCK_FORCE_BOUNDS = Object.freeze({
  peakDraw: DRAW_WEIGHT_BOUNDS,
  arrowWeight: bounds(grains(10), grains(100_000)),
  virtualMass: bounds(grains(0), grains(2_000)),
})

export interface Launch {
  readonly peakDraw: Force
  readonly virtualMass: Mass
}

/**
 * The greatest push of the string on the nock: what is left of the peak draw weight once it has moved the bow's own mass.
 *
 *   F = F_peak·m/(m + m_v)
 *
 * @returns the force, or `outside-model` for an input not within {@link NOCK_FORCE_BOUNDS}
 *
 * Source: [OWN], from the virtual mass of [KLOPSTEG]: arrow and m_v share one acceleration, so the arrow has its share of the force.
 */
export function nockForce({ peakDraw, virtualMass }: Launch, arrowMass: Mass): Outcome<Force> {
  const refused = refusal([
    ...outside('peak draw weight', peakDraw, NOCK_FORCE_BOUNDS.peakDraw, 'lbf'),
    ...outside('finished weight', arrowMass, NOCK_FORCE_BOUNDS.arrowWeight, 'gr'),
    ...outside('virtual mass', virtualMass, NOCK_FORCE_BOUNDS.virtualMass, 'gr'),
  ])
  if (refused) return refused
  const force = scaled(peakDraw, arrowMass / (arrowMass + virtualMass))
  return known(force, {
    equation: 'F_nock = F_peak·m/(m + m_v)',
    inputs: [
      term('peak draw weight', peakDraw, 'lbf'),
      term('finished weight', arrowMass, 'gr'),
      term('virtual mass', virtualMass, 'gr'),
    ],
    result: [term('force at the nock', force, 'lbf')],
    source: ['KLOPSTEG', 'OWN'],
  })
}
