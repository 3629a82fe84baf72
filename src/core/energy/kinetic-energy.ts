import { type Outcome, known, term } from '../outcome'
import { type Energy, type Mass, type Speed, joules } from '../quantity'
import { outside, refusal } from '../refusal'
import { FLYING_BOUNDS } from './flying-bounds'

/**
 * Kinetic energy of an arrow, E = ½mv².
 *
 * In grains, ft/s and ft·lbf the divisor is 450 436.68. Charts that divide by 450 240 take g = 32.16 ft/s² and are
 * 0.044 % high.
 *
 * @returns the energy, or `outside-model` where weight or speed is not within {@link FLYING_BOUNDS}
 *
 * Source: [MECHANICS], units [SP811].
 */
export function kineticEnergy(mass: Mass, speed: Speed): Outcome<Energy> {
  const refused = refusal([
    ...outside('arrow weight', mass, FLYING_BOUNDS.mass, 'gr'),
    ...outside('arrow speed', speed, FLYING_BOUNDS.speed, 'ft/s'),
  ])
  if (refused) return refused
  const energy = joules((mass * speed ** 2) / 2)
  return known(energy, {
    equation: 'E = ½·m·v²',
    inputs: [term('arrow weight', mass, 'gr'), term('arrow speed', speed, 'ft/s')],
    result: [term('kinetic energy', energy, 'ft·lbf')],
    source: ['MECHANICS', 'SP811'],
  })
}
