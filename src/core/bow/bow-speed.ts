import { type Estimate, type Outcome } from '../outcome'
import type { Mass, Speed } from '../quantity'
import { type KnownBow, type SourcedBowEnergy, knownBow } from './known-bow'
import { launchSpeed } from './launch-speed'

/** An arrow's speed off a bow, and what it stands on. */
export interface BowSpeed extends SourcedBowEnergy {
  readonly speed: Estimate<Speed>
}

/**
 * Speed of an arrow of a given weight off a bow of which this is known.
 *
 * @returns the speed with its band, the bow's energy and virtual mass, and which source they came from; or the findings of
 * {@link knownBow} or {@link launchSpeed}
 */
export function bowSpeed(mass: Mass, bow: KnownBow): Outcome<BowSpeed> {
  const energy = knownBow(bow)
  if (!energy.ok) return energy
  const speed = launchSpeed(energy.value, mass, energy.derivation)
  if (!speed.ok) return speed
  return {
    ...speed,
    value: { ...energy.value, speed: speed.value },
    findings: [...energy.findings, ...speed.findings],
  }
}
