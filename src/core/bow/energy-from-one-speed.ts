import { positiveBand, symmetricBand } from '../numeric/band'
import { type Mass, type Ratio, type Speed, joules, ratio } from '../quantity'
import type { BowEnergy } from './bow-energy'
import type { VirtualMassBelief } from './virtual-mass-prior'

/**
 * E = s·½(m + m_v)v² from one speed and a believed virtual mass, where s carries it to another draw. The heavier the
 * virtual mass, the more energy the same speed speaks of: the two errors go together.
 *
 * @param speedSd relative standard error of the speed, above zero
 */
export function energyFromOneSpeed(
  mass: Mass,
  speed: Speed,
  speedSd: Ratio,
  virtualMass: VirtualMassBelief,
  scale = 1,
): BowEnergy {
  const moved = mass + virtualMass.value // kg
  const energy = joules((scale * moved * speed ** 2) / 2)
  const ofMass = virtualMass.sd / moved
  const relative = Math.hypot(ofMass, 2 * speedSd)
  return {
    energy: positiveBand(energy, joules(energy * relative)),
    virtualMass: symmetricBand(virtualMass.value, virtualMass.sd),
    correlation: ratio(ofMass / relative),
  }
}
