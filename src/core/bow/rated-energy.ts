import { DRAW_WEIGHT_BOUNDS } from '../energy/grains-per-pound'
import { type Outcome, known, term } from '../outcome'
import { type Force, type Length, type Mass, type Speed, grains, inches, poundsForce, ratio } from '../quantity'
import { outside, refusal } from '../refusal'
import type { BowEnergy } from './bow-energy'
import { energyFromOneSpeed } from './energy-from-one-speed'
import { powerStroke } from './power-stroke'
import { READING_BOUNDS } from './reading'
import { VIRTUAL_MASS_BOUNDS, type VirtualMassBelief } from './virtual-mass-prior'

/** How a bow was set, and what it shot, when its rated speed was taken. */
export interface RatingConditions {
  readonly peakDrawWeight: Force
  readonly drawLength: Length
  readonly arrowMass: Mass
}
export const RATING_CONDITIONS: RatingConditions = Object.freeze({
  peakDrawWeight: poundsForce(70),
  drawLength: inches(30),
  arrowMass: grains(350),
}) // [F1544]

/** The bow as it will be shot. */
export interface BowSetting {
  readonly peakDrawWeight: Force
  readonly drawLength: Length
  readonly braceHeight: Length
}

/** Relative standard error of a speed taken from a rating and scaled: 3 %, common practice, no source [CP]. */
export const RATING_SD = ratio(0.03)

/**
 * A bow's energy from its rated speed, carried to its peak draw weight and power stroke.
 *
 *   E = ½(m_rated + m_v)·v_rated² · (F/F_rated) · (d/d_rated),   d = draw length − 1¾ in − brace height
 *
 * @param conditions of the rating; the standard's own unless others are told
 * @returns energy and virtual mass; `no-power-stroke`; or `outside-model`
 *
 * Source: [F1544], [F1880], [KLOPSTEG]; scaling in proportion is exact for curves of one shape.
 */
export function ratedEnergy(
  ratedSpeed: Speed,
  setting: BowSetting,
  virtualMass: VirtualMassBelief,
  conditions: RatingConditions = RATING_CONDITIONS,
): Outcome<BowEnergy> {
  const refused = refusal([
    ...outside('rated speed', ratedSpeed, READING_BOUNDS.speed, 'ft/s'),
    ...outside('peak draw weight', setting.peakDrawWeight, DRAW_WEIGHT_BOUNDS, 'lbf'),
    ...outside('peak draw weight of the rating', conditions.peakDrawWeight, DRAW_WEIGHT_BOUNDS, 'lbf'),
    ...outside('arrow weight of the rating', conditions.arrowMass, READING_BOUNDS.mass, 'gr'),
    ...outside('virtual mass', virtualMass.value, VIRTUAL_MASS_BOUNDS.value, 'gr'),
    ...outside('error of the virtual mass', virtualMass.sd, VIRTUAL_MASS_BOUNDS.sd, 'gr'),
  ])
  if (refused) return refused
  const stroke = powerStroke(setting.drawLength, setting.braceHeight)
  if (!stroke.ok) return stroke
  const ratedStroke = powerStroke(conditions.drawLength, setting.braceHeight)
  if (!ratedStroke.ok) return ratedStroke
  const scale = (setting.peakDrawWeight / conditions.peakDrawWeight) * (stroke.value / ratedStroke.value)
  const bow = energyFromOneSpeed(conditions.arrowMass, ratedSpeed, RATING_SD, virtualMass, scale)
  return known(bow, {
    equation: 'E = ½·(m_rated + m_v)·v_rated² · (peak / rated peak) · (power stroke / rated power stroke)',
    inputs: [
      term('rated speed', ratedSpeed, 'ft/s'),
      term('arrow weight of the rating', conditions.arrowMass, 'gr'),
      term('virtual mass', virtualMass.value, 'gr'),
      term('peak draw weight', setting.peakDrawWeight, 'lbf'),
      term('peak draw weight of the rating', conditions.peakDrawWeight, 'lbf'),
      term('draw length', setting.drawLength, 'in'),
      term('draw length of the rating', conditions.drawLength, 'in'),
      term('brace height', setting.braceHeight, 'in'),
    ],
    result: [
      term('bow energy', bow.energy.value, 'ft·lbf'),
      term('standard error of the bow energy', bow.energy.sd, 'ft·lbf'),
    ],
    source: ['F1544', 'F1880', 'KLOPSTEG', 'CP'],
    steps: [stroke.derivation, ratedStroke.derivation],
  })
}
