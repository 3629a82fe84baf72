import { type Density, gramsPerCubicCentimetre, grains, type Mass, scaled } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { POST_BOUNDS } from './post-problems'

/** From the heaviest to the lightest. */
export const PASSES = ['heavy', 'usual', 'light'] as const
export type Pass = (typeof PASSES)[number]

/** What one pass takes off, and its standard deviation from pass to pass. */
export interface Removal {
  readonly mean: Mass
  readonly sd: Mass
}
export type PassRemoval = Readonly<Record<Pass, Removal>>

/** Density of the steel that the usual removals are those of. */
const OF_STEEL = gramsPerCubicCentimetre(8)

/** One pass over a steel post: common practice, no source [CP]. The shop's own readings take its place. */
export const STEEL_PASSES: PassRemoval = Object.freeze({
  heavy: { mean: grains(3), sd: grains(0.8) },
  usual: { mean: grains(1.2), sd: grains(0.35) },
  light: { mean: grains(0.6), sd: grains(0.2) },
})

/**
 * What a pass takes off a post of another material: the same length, so that weight goes with density (aluminium about a
 * third of steel).
 *
 * @returns the usual removals, or `outside-model`
 *
 * Source: common practice, no source [CP].
 */
export function passRemoval(density: Density): Outcome<PassRemoval> {
  const refused = refusal(outside('density', density, POST_BOUNDS.density, 'g/cm³'))
  if (refused) return refused
  const of = ({ mean, sd }: Removal): Removal => ({
    mean: scaled(mean, density / OF_STEEL),
    sd: scaled(sd, density / OF_STEEL),
  })
  const value = { heavy: of(STEEL_PASSES.heavy), usual: of(STEEL_PASSES.usual), light: of(STEEL_PASSES.light) }
  return known(value, {
    equation: 'removal = steel removal·ρ/ρ(steel)',
    inputs: [term('density', density, 'g/cm³'), term('density of steel', OF_STEEL, 'g/cm³', 'constant')],
    result: PASSES.map((pass) => term(`${pass} pass`, value[pass].mean, 'gr')),
    source: ['CP'],
  })
}
