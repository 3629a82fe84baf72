/** Speed, energy, momentum and grains per pound at the working weight, each with its 95 % band. */
import { type BowSpeed, bowSpeed } from '../../core/bow/bow-speed'
import { grainsPerPound } from '../../core/energy/grains-per-pound'
import { kineticEnergy } from '../../core/energy/kinetic-energy'
import { momentum } from '../../core/energy/momentum'
import { type Derivation, type Estimate, type Outcome, known } from '../../core/outcome'
import {
  type Dimension,
  type Energy,
  type MassPerForce,
  type Momentum,
  type Quantity,
  type Speed,
  scaled,
} from '../../core/quantity'
import type { CallBow } from './call-bow'
import type { Follows, Origins } from './follows'
import { following, needs, traced, tracedOutcome } from './follows'
import type { SensibleWeight } from './sensible-weight'

export interface FlightFollows {
  readonly speed: Follows<BowSpeed>
  readonly energy: Follows<Estimate<Energy>>
  readonly momentum: Follows<Estimate<Momentum>>
  readonly perLb: Follows<MassPerForce>
}

export function flightFollows(bow: CallBow, weight: Follows<SensibleWeight>): FlightFollows {
  const working = weight.kind === 'figure' && weight.outcome.ok ? weight.outcome.value : undefined
  const origins: Origins = {
    ...bow.origins,
    'arrow speed': { origin: 'computed' },
    'arrow weight': { origin: working?.workingFrom === 'wish' ? 'answered' : 'shop rule' },
    'finished weight': { origin: working?.workingFrom === 'wish' ? 'answered' : 'shop rule' },
  }
  const hasReadings = (bow.known.chronograph ?? []).length > 0 || (bow.known.forceDraw ?? []).length > 0
  const speed: Follows<BowSpeed> =
    bow.peak === undefined && !hasReadings
      ? needs('peakDrawWeightLb', 'labelDrawWeightLb', 'chronograph')
      : following(weight, ({ working: mass }) => tracedOutcome(bowSpeed(mass, bow.known), origins))
  const mass = working?.working
  return {
    speed,
    energy: following(speed, (value, steps) => carried(value.speed, (v) => kineticEnergy(mass!, v), 2, origins, steps)),
    momentum: following(speed, (value, steps) => carried(value.speed, (v) => momentum(mass!, v), 1, origins, steps)),
    perLb:
      bow.peak === undefined
        ? needs('peakDrawWeightLb', 'labelDrawWeightLb')
        : following(weight, ({ working: m }) => tracedOutcome(grainsPerPound(m, bow.peak!), origins)),
  }
}

/** A figure at the speed and at both ends of the speed's band; `power` of the speed that it goes with. */
function carried<D extends Dimension>(
  speed: Estimate<Speed>,
  at: (speed: Speed) => Outcome<Quantity<D>>,
  power: number,
  origins: Origins,
  steps: Derivation,
): Outcome<Estimate<Quantity<D>>> {
  const [value, low, high] = [at(speed.value), at(speed.low), at(speed.high)]
  if (!value.ok) return value
  if (!low.ok) return low
  if (!high.ok) return high
  const sd = scaled(value.value, (power * speed.sd) / speed.value)
  const derivation: Derivation = { ...traced(value.derivation, origins), steps: [steps] }
  return known({ value: value.value, sd, low: low.value, high: high.value }, derivation, value.findings)
}
