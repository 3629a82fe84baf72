import { grainsPerPound } from '@/core/energy/grains-per-pound'
import { kineticEnergy } from '@/core/energy/kinetic-energy'
import { momentum } from '@/core/energy/momentum'
import { feetPerSecond, grains, poundsForce } from '@/core/quantity'
import type { WorkedExamples } from './worked-example'

export const energyExamples: WorkedExamples = {
  kineticEnergy: (n) => kineticEnergy(grains(n(650)), feetPerSecond(n(250))),
  momentum: (n) => momentum(grains(n(650)), feetPerSecond(n(250))),
  grainsPerPound: (n) => grainsPerPound(grains(n(825)), poundsForce(n(72))),
}
