import { type Outcome, known, term } from '../outcome'
import { type Mass, type Momentum, type Speed, kilogramMetresPerSecond } from '../quantity'
import { outside, refusal } from '../refusal'
import { FLYING_BOUNDS } from './flying-bounds'

/**
 * Momentum of an arrow, p = mv. In grains, ft/s and slug·ft/s the divisor is 225 218.34.
 *
 * @returns the momentum, or `outside-model` where weight or speed is not within {@link FLYING_BOUNDS}
 *
 * Source: [MECHANICS], units [SP811].
 */
export function momentum(mass: Mass, speed: Speed): Outcome<Momentum> {
  const refused = refusal([
    ...outside('arrow weight', mass, FLYING_BOUNDS.mass, 'gr'),
    ...outside('arrow speed', speed, FLYING_BOUNDS.speed, 'ft/s'),
  ])
  if (refused) return refused
  const p = kilogramMetresPerSecond(mass * speed)
  return known(p, {
    equation: 'p = m·v',
    inputs: [term('arrow weight', mass, 'gr'), term('arrow speed', speed, 'ft/s')],
    result: [term('momentum', p, 'slug·ft/s')],
    source: ['MECHANICS', 'SP811'],
  })
}
