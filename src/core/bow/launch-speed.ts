import { FLYING_BOUNDS } from '../energy/flying-bounds'
import type { Finding } from '../finding'
import { positiveBand } from '../numeric/band'
import { type Derivation, type Estimate, type Outcome, bounds, known, term, within } from '../outcome'
import { type Mass, type Speed, grains, joules, metresPerSecond, ratio, scaled } from '../quantity'
import { outside, refusal } from '../refusal'
import type { BowEnergy } from './bow-energy'

/** What any fit or belief may come to; the virtual mass may fall short of nothing by its rounding. */
const BOW_BOUNDS = Object.freeze({
  energy: bounds(joules(1e-9), joules(1e9)),
  energySd: bounds(joules(0), joules(1e9)),
  virtualMass: bounds(grains(-0.1), grains(1e6)),
  virtualMassSd: bounds(grains(0), grains(1e9)),
  correlation: bounds(ratio(-1 - 1e-9), ratio(1 + 1e-9)),
})

/**
 * Speed of an arrow off a bow, v = √(2E/(m + m_v)), with the errors of E and m_v and how they go together.
 *
 * @param steps the working of the bow's energy, to stand under this one
 * @returns the speed, with `extrapolated` at a weight beyond those measured; or `outside-model`
 *
 * Source: [KLOPSTEG]; the error by [GUM] 5.1.2.
 */
export function launchSpeed(bow: BowEnergy, mass: Mass, ...steps: readonly Derivation[]): Outcome<Estimate<Speed>> {
  const { energy, virtualMass, correlation, measured } = bow
  const refused = refusal([
    ...outside('arrow weight', mass, FLYING_BOUNDS.mass, 'gr'),
    ...outside('bow energy', energy.value, BOW_BOUNDS.energy, 'ft·lbf'),
    ...outside('error of the bow energy', energy.sd, BOW_BOUNDS.energySd, 'ft·lbf'),
    ...outside('virtual mass', virtualMass.value, BOW_BOUNDS.virtualMass, 'gr'),
    ...outside('error of the virtual mass', virtualMass.sd, BOW_BOUNDS.virtualMassSd, 'gr'),
    ...outside('correlation of the two errors', correlation, BOW_BOUNDS.correlation, '1'),
  ])
  if (refused) return refused
  const moved = mass + virtualMass.value // kg
  const speed = metresPerSecond(Math.sqrt((2 * energy.value) / moved))
  const ofEnergy = energy.sd / energy.value
  const ofMass = virtualMass.sd / moved
  // ofEnergy² + ofMass² − 2·ρ·ofEnergy·ofMass, as a sum of squares that rounding cannot make negative
  const both = Math.hypot(ofEnergy - correlation * ofMass, ofMass * Math.sqrt(Math.max(0, 1 - correlation ** 2)))
  const sd = scaled(speed, both / 2)
  const findings: readonly Finding[] =
    measured && !within(mass, measured) ? [{ code: 'extrapolated', mass, measured, sd }] : []
  return known(
    positiveBand(speed, sd),
    {
      equation: 'v = √(2·E / (m + m_v))',
      inputs: [
        term('arrow weight', mass, 'gr'),
        term('bow energy', energy.value, 'ft·lbf', 'computed'),
        term('virtual mass', virtualMass.value, 'gr', 'computed'),
      ],
      result: [term('arrow speed', speed, 'ft/s'), term('standard error of the speed', sd, 'ft/s')],
      source: ['KLOPSTEG', 'GUM'],
      steps,
    },
    findings,
  )
}
