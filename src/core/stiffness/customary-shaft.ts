import { outsideModel } from '../finding'
import { known, noAnswer, type Outcome, term, within } from '../outcome'
import { grainsPerInch, inInches, type Length, type LinearDensity } from '../quantity'
import { SPINE_BOUNDS } from './static-spine'

/** Static spine, in, and weight per inch, gr, of shafts customarily picked [CP]; softest first. */
const CUSTOMARY = [
  [0.6, 6.5],
  [0.5, 7.3],
  [0.4, 8.4],
  [0.34, 9.3],
  [0.3, 9.8],
  [0.25, 10.9],
  [0.15, 13.27],
] as const

/**
 * What a shaft of a spine is likely to weigh, for the call, before a shaft is chosen: a power law between neighbouring
 * customary shafts, and the outermost ones' beyond them.
 *
 * @returns weight per length, or `outside-model` when the spine is not within {@link SPINE_BOUNDS}
 *
 * Source: [CP], seven customary picks. Error: shafts of one spine differ by 2 gr/in either way; weigh the shaft.
 */
export function customaryShaft(spine: Length): Outcome<LinearDensity> {
  if (!within(spine, SPINE_BOUNDS)) return noAnswer(outsideModel('static spine', spine, SPINE_BOUNDS, 'in'))
  const deflection = inInches(spine)
  const next = CUSTOMARY.findIndex(([softest], i) => i > 0 && deflection >= softest)
  const j = next === -1 ? CUSTOMARY.length - 1 : next
  const [softer, lighter] = CUSTOMARY[j - 1]!
  const [stiffer, heavier] = CUSTOMARY[j]!
  const power = Math.log(heavier / lighter) / Math.log(softer / stiffer)
  const weight = grainsPerInch(lighter * (softer / deflection) ** power)
  return known(weight, {
    equation: 'w = w₁·(δ₁/δ)^p through the two nearest customary shafts',
    inputs: [term('static spine', spine, 'in')],
    result: [term('weight per inch', weight, 'gr/in')],
    source: ['CP'],
    note: 'A guess for the call; weigh the shaft.',
  })
}
