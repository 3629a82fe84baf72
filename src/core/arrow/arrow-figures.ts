/**
 * Every figure of one arrow off one bow, worked out once: sheet, bench, prints and the compute command all read this.
 * A figure is undefined while nothing that it needs is known, and an outcome with findings when the core cannot say.
 */
import type { BowSpeed } from '../bow/bow-speed'
import { bowSpeed } from '../bow/bow-speed'
import type { KnownBow } from '../bow/known-bow'
import { knownBow } from '../bow/known-bow'
import { VIRTUAL_MASS_PRIOR } from '../bow/virtual-mass-prior'
import type { Balance } from '../balance/balance-point'
import { balancePoint } from '../balance/balance-point'
import { balanceUncertainty } from '../balance/balance-uncertainty'
import type { PartSpread } from '../balance/balance-uncertainty'
import { foc } from '../balance/foc'
import { grainsPerPound } from '../energy/grains-per-pound'
import { kineticEnergy } from '../energy/kinetic-energy'
import { momentum } from '../energy/momentum'
import type { Bounds, Derivation, Estimate, Known, Outcome } from '../outcome'
import { known } from '../outcome'
import type { Dimension, Energy, Length, Mass, MassPerForce, Momentum, Quantity, Ratio, Speed } from '../quantity'
import { difference, inches, ratio, scaled, sum } from '../quantity'
import { columnReserve } from '../stiffness/column-reserve'
import { reserveFindings } from '../stiffness/reserve-band'
import { reserveEstimate } from '../stiffness/reserve-estimate'
import type { Arrow } from './arrow'

export interface ArrowInputs {
  readonly arrow: Arrow
  /** The length that FOC is measured to, when it is another than the shaft front (an outsert's shoulder). */
  readonly focLength?: Length
  readonly bow: KnownBow
  /** Standard uncertainties; without them weight, balance and reserve come without a band. */
  readonly spread?: PartSpread
  readonly weight?: Estimate<Mass>
  readonly reserveBand?: Bounds<Ratio>
}

export interface ArrowFigures {
  readonly finished: Outcome<Mass>
  readonly balance: Outcome<Estimate<Length> | Length>
  readonly foc: Outcome<Ratio>
  readonly grainsPerPound: Outcome<MassPerForce> | undefined
  readonly bowEnergy: Outcome<Estimate<Energy>> | undefined
  readonly virtualMass: Outcome<Estimate<Mass>> | undefined
  readonly speed: Outcome<Estimate<Speed>> | undefined
  readonly provenance: BowSpeed['provenance'] | undefined
  readonly kineticEnergy: Outcome<Estimate<Energy>> | undefined
  readonly momentum: Outcome<Estimate<Momentum>> | undefined
  readonly columnReserve: Outcome<Estimate<Ratio> | Ratio> | undefined
}

/** How unsure a draw weight, a static spine and a cut are (one s.d.): common practice, no source [CP]. */
const PEAK_SHARE = 0.015
const SPINE_SHARE = ratio(0.015)
const LENGTH_SD = inches(0.02)

/** The answer with another value, and what it stood on kept. */
const valued = <T, U>(outcome: Outcome<T>, value: (from: T) => U): Outcome<U> =>
  outcome.ok ? { ...outcome, value: value(outcome.value) } : outcome

/** A figure that grows with the speed, at the ends of the speed's band; the speed's own working stands under it. */
function alongSpeed<D extends Dimension>(
  speed: Outcome<BowSpeed>,
  at: (speed: Speed) => Outcome<Quantity<D>>,
): Outcome<Estimate<Quantity<D>>> {
  if (!speed.ok) return speed
  const { value, sd, low, high } = speed.value.speed
  const all = [at(value), at(low), at(high), at(sum(value, sd))]
  const refused = all.find((each) => !each.ok)
  if (refused !== undefined) return refused
  type Answer = Known<Quantity<D>>
  const [middle, from, to, beside] = all.filter((each) => each.ok) as [Answer, Answer, Answer, Answer]
  const estimate = {
    value: middle.value,
    sd: difference(beside.value, middle.value),
    low: from.value,
    high: to.value,
  }
  const derivation = { ...middle.derivation, steps: [speed.derivation] }
  return known(estimate, derivation, middle.findings)
}

function reserveOf(inputs: ArrowInputs, speed: Outcome<BowSpeed> | undefined): ArrowFigures['columnReserve'] {
  const { arrow, bow, reserveBand } = inputs
  const peak = bow.peakDrawWeight
  if (peak === undefined) return undefined
  const prior = VIRTUAL_MASS_PRIOR[bow.kind]
  const told = { value: bow.virtualMass?.value ?? prior.value, sd: bow.virtualMass?.sd ?? prior.sd }
  const virtualMass = speed?.ok ? speed.value.virtualMass : told
  const banded = reserveEstimate({
    arrow,
    peakDraw: { value: peak, sd: scaled(peak, PEAK_SHARE) },
    virtualMass,
    spineSd: SPINE_SHARE,
    lengthSd: LENGTH_SD,
  })
  const reserve = banded.ok ? banded : columnReserve(arrow, { peakDraw: peak, virtualMass: virtualMass.value })
  if (!reserve.ok || reserveBand === undefined) return reserve
  const value = typeof reserve.value === 'number' ? reserve.value : reserve.value.value
  return { ...reserve, findings: [...reserve.findings, ...reserveFindings(value, reserveBand)] }
}

/** @returns all figures; each answers for itself */
export function arrowFigures(inputs: ArrowInputs): ArrowFigures {
  const { arrow, bow, spread, focLength = arrow.length } = inputs
  const whole: Outcome<Balance> = balancePoint(arrow)
  const finished = valued(whole, ({ mass }) => mass)
  const balance = spread === undefined ? valued(whole, ({ point }) => point) : balanceUncertainty(arrow, spread)
  const focOf = whole.ok ? withStep(foc(whole.value.point, focLength), whole.derivation) : whole
  const isKnown = hasSpeed(bow)
  const speed = whole.ok && isKnown ? bowSpeed(whole.value.mass, bow) : undefined
  const energy = isKnown ? knownBow(bow) : undefined
  const mass = whole.ok ? whole.value.mass : undefined
  return {
    finished,
    balance,
    foc: focOf,
    grainsPerPound:
      mass === undefined || bow.peakDrawWeight === undefined ? undefined : grainsPerPound(mass, bow.peakDrawWeight),
    bowEnergy: energy && valued(energy, (bowEnergy) => bowEnergy.energy),
    virtualMass: energy && valued(energy, (bowEnergy) => bowEnergy.virtualMass),
    speed: speed && valued(speed, (from) => from.speed),
    provenance: speed?.ok ? speed.value.provenance : undefined,
    kineticEnergy:
      mass === undefined || speed === undefined ? undefined : alongSpeed(speed, (v) => kineticEnergy(mass, v)),
    momentum: mass === undefined || speed === undefined ? undefined : alongSpeed(speed, (v) => momentum(mass, v)),
    columnReserve: reserveOf(inputs, speed),
  }
}

const withStep = <T>(outcome: Outcome<T>, under: Derivation): Outcome<T> =>
  outcome.ok ? { ...outcome, derivation: { ...outcome.derivation, steps: [under] } } : outcome

const hasSpeed = (bow: KnownBow) =>
  (bow.chronograph?.length ?? 0) > 0 || (bow.forceDraw?.length ?? 0) > 0 || bow.ratedSpeed !== undefined
