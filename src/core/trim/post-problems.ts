import type { Finding } from '../finding'
import { bounds } from '../outcome'
import { gramsPerCubicCentimetre, grains, millimetres } from '../quantity'
import { outside } from '../refusal'
import type { Post, PostSection } from './post'

/** Where the trim models hold: any post a shop can hold in its hand. */
export const POST_BOUNDS = Object.freeze({
  length: bounds(millimetres(0), millimetres(500)),
  diameter: bounds(millimetres(0.5), millimetres(40)),
  bore: bounds(millimetres(0), millimetres(40)),
  density: bounds(gramsPerCubicCentimetre(0.5), gramsPerCubicCentimetre(25)),
  chamfer: bounds(millimetres(0), millimetres(5)),
  weight: bounds(grains(-10_000), grains(10_000)),
  trim: bounds(grains(0), grains(10_000)),
})

const sectionProblems = ({ name, length, outerDiameter, bore, density }: PostSection): readonly Finding[] => [
  ...outside(`length of ${name}`, length, POST_BOUNDS.length, 'mm'),
  ...outside(`outer diameter of ${name}`, outerDiameter, POST_BOUNDS.diameter, 'mm'),
  ...outside(`bore of ${name}`, bore, POST_BOUNDS.bore, 'mm'),
  ...outside(`density of ${name}`, density, POST_BOUNDS.density, 'g/cm³'),
  ...(bore >= outerDiameter ? [{ code: 'bore-wider-than-tube', part: name, bore, outer: outerDiameter } as const] : []),
]

/** What keeps a post from being trimmed by numbers: nothing, or each thing that is wrong with it. */
export const postProblems = ({ sections, leastBond }: Post): readonly Finding[] => [
  ...outside('bond that must stay', leastBond, POST_BOUNDS.length, 'mm'),
  ...sections.flatMap(sectionProblems),
]
