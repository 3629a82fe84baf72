import { positiveBand, symmetricBand } from '../numeric/band'
import { type Outcome, known, term } from '../outcome'
import { joules, ratio } from '../quantity'
import { outside, refusal } from '../refusal'
import type { BowEnergy } from './bow-energy'
import { type DrawPoint, storedEnergy } from './stored-energy'
import { VIRTUAL_MASS_BOUNDS, type VirtualMassBelief } from './virtual-mass-prior'

/**
 * How much of the stored energy moves arrow and virtual mass. The measured recurve of [LIMBS] gives 40.603 of 42.97 J;
 * other bows are assumed within a few hundredths of it [CP].
 */
export const RECOVERED = Object.freeze({ share: ratio(40.603 / 42.97), sd: ratio(0.04) })

/**
 * A bow's energy from its force-draw curve: the stored energy times the share that is recovered, which is what the
 * let-down curve gives back where there is one, and {@link RECOVERED} otherwise. The virtual mass is believed.
 *
 * @returns energy and virtual mass; or what {@link storedEnergy} answers
 *
 * Source: [F1832] for the stored energy, [LIMBS] for the share.
 */
export function forceDrawEnergy(
  points: readonly DrawPoint[],
  letDown: readonly DrawPoint[],
  virtualMass: VirtualMassBelief,
): Outcome<BowEnergy> {
  const refused = refusal([
    ...outside('virtual mass', virtualMass.value, VIRTUAL_MASS_BOUNDS.value, 'gr'),
    ...outside('error of the virtual mass', virtualMass.sd, VIRTUAL_MASS_BOUNDS.sd, 'gr'),
  ])
  if (refused) return refused
  const stored = storedEnergy(points, letDown)
  if (!stored.ok) return stored
  const { energy: work, hysteresis } = stored.value
  const share = hysteresis === undefined ? RECOVERED.share : ratio(1 - hysteresis)
  const value = joules(work.value * share)
  const energy = positiveBand(value, joules(value * Math.hypot(work.sd / work.value, RECOVERED.sd / share)))
  return known(
    { energy, virtualMass: symmetricBand(virtualMass.value, virtualMass.sd), correlation: ratio(0) },
    {
      equation: 'E = W × share recovered',
      inputs: [
        term('stored energy', work.value, 'ft·lbf', 'computed'),
        term('share recovered', share, '%', hysteresis === undefined ? 'assumed' : 'computed'),
        term('virtual mass', virtualMass.value, 'gr'),
      ],
      result: [
        term('bow energy', energy.value, 'ft·lbf'),
        term('standard error of the bow energy', energy.sd, 'ft·lbf'),
      ],
      source: ['F1832', 'LIMBS', 'KLOPSTEG'],
      steps: [stored.derivation],
    },
    stored.findings,
  )
}
