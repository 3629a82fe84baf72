import { type Outcome, bounds, known, noAnswer, term } from '../outcome'
import { type Speed, greatest, kilograms, least, metresPerSecond, ratio } from '../quantity'
import { outside, refusal } from '../refusal'
import type { BowEnergy } from './bow-energy'
import { energyFromOneSpeed } from './energy-from-one-speed'
import { CHRONOGRAPH_SD, type ChronographReading, readingProblems } from './reading'
import { VIRTUAL_MASS_BOUNDS, type VirtualMassBelief } from './virtual-mass-prior'

/**
 * A bow's energy from readings of one arrow weight and a believed virtual mass, E = ½(m + m_v)v². Several readings are
 * taken at their mean.
 *
 * @param speedSd standard error of one reading
 * @returns energy and virtual mass, or `too-few-points`, or `outside-model`
 *
 * Source: [KLOPSTEG]; the errors by [GUM] 5.1.2.
 */
export function oneWeight(
  readings: readonly ChronographReading[],
  virtualMass: VirtualMassBelief,
  speedSd: Speed = CHRONOGRAPH_SD,
): Outcome<BowEnergy> {
  const refused = refusal([
    ...readingProblems(readings, speedSd),
    ...outside('virtual mass', virtualMass.value, VIRTUAL_MASS_BOUNDS.value, 'gr'),
    ...outside('error of the virtual mass', virtualMass.sd, VIRTUAL_MASS_BOUNDS.sd, 'gr'),
  ])
  if (refused) return refused
  const n = readings.length
  const [first, ...others] = readings.map(({ mass }) => mass)
  if (first === undefined) return noAnswer({ code: 'too-few-points', of: 'chronograph readings', count: 0, needed: 1 })
  const mass = kilograms(readings.reduce((total, reading) => total + reading.mass, 0) / n)
  const speed = metresPerSecond(readings.reduce((total, reading) => total + reading.speed, 0) / n)
  const bow = energyFromOneSpeed(mass, speed, ratio(speedSd / Math.sqrt(n) / speed), virtualMass)
  return known(
    { ...bow, measured: bounds(least(first, ...others), greatest(first, ...others)) },
    {
      equation: 'E = ½·(m + m_v)·v²',
      inputs: [
        term('arrow weight', mass, 'gr'),
        term('arrow speed', speed, 'ft/s'),
        term('virtual mass', virtualMass.value, 'gr'),
        term('error of one reading', speedSd, 'ft/s'),
      ],
      result: [
        term('bow energy', bow.energy.value, 'ft·lbf'),
        term('standard error of the bow energy', bow.energy.sd, 'ft·lbf'),
      ],
      source: ['KLOPSTEG', 'GUM'],
    },
  )
}
