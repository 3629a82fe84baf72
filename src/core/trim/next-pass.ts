import { normalCdf } from '../numeric/distributions/normal-cdf'
import { difference, grains, type Mass, negated, type Ratio, ratio, sameDimension } from '../quantity'
import { bounds, type Estimate, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { SPREAD_BOUNDS } from '../weight/weight-bounds'
import { type Pass, PASSES, type PassRemoval } from './pass-removal'
import { POST_BOUNDS } from './post-problems'

export interface TrimState {
  /** Still to come off, the chamfer's share included, with its uncertainty. */
  readonly remaining: Pick<Estimate<Mass>, 'value' | 'sd'>
  /** What breaking the edge will still take; 0 when it is done. */
  readonly chamfer: Mass
  /** Either side of the target. */
  readonly tolerance: Mass
  /** What the post can still give by length. */
  readonly available: Mass
}

export interface PassAdvice {
  /** The pass to take now; `chamfer` when only the edge is left; `stop` when nothing is. */
  readonly next: Pass | 'chamfer' | 'stop'
  /** For each pass, the chance that it leaves the arrow lighter than its tolerance once the edge is broken. */
  readonly chanceTooLight: Readonly<Record<Pass, Ratio>>
  /** Weight over the target that is left once the edge is broken, if no further pass is taken. Below 0 it is light. */
  readonly over: Mass
}

/** A pass that would make the arrow too light more often than this is not advised. */
export const MOST_CHANCE_TOO_LIGHT = ratio(0.05)
export const REMOVAL_BOUNDS = bounds(grains(0.001), grains(1000))

/**
 * Which pass to take next at the grinder. The heaviest that brings the arrow nearer to its target and makes it too light
 * in at most one case of twenty; then the edge; then stop.
 *
 *   P(too light) = Φ((removal + chamfer − remaining − tolerance)/√(u²(remaining) + s²(removal)))
 *
 * @returns the advice. `pass-too-coarse` when the arrow stays too heavy and no pass is fine enough; `trim-into-bond` when
 *   what must come off is not there; `light-arrow` when it is already too light; `outside-model`
 *
 * Source: derived here; removals and the one case of twenty are common practice, no source [CP].
 */
export function nextPass(state: TrimState, passes: PassRemoval): Outcome<PassAdvice> {
  const { remaining, chamfer, tolerance, available } = state
  const refused = refusal([
    ...outside('weight still to trim', remaining.value, POST_BOUNDS.weight, 'gr'),
    ...outside('uncertainty of the weight to trim', remaining.sd, SPREAD_BOUNDS, 'gr'),
    ...outside('weight of the chamfer', chamfer, POST_BOUNDS.trim, 'gr'),
    ...outside('tolerance', tolerance, SPREAD_BOUNDS, 'gr'),
    ...outside('what the post can give', available, POST_BOUNDS.trim, 'gr'),
    ...PASSES.flatMap((pass) => [
      ...outside(`removal of a ${pass} pass`, passes[pass].mean, REMOVAL_BOUNDS, 'gr'),
      ...outside(`spread of a ${pass} pass`, passes[pass].sd, REMOVAL_BOUNDS, 'gr'),
    ]),
  ])
  if (refused) return refused
  const over = difference(remaining.value, chamfer)
  const tooLight = (pass: Pass) => {
    const { mean, sd } = passes[pass]
    return ratio(normalCdf((mean - over - tolerance) / Math.hypot(remaining.sd, sd)))
  }
  const chanceTooLight = { heavy: tooLight('heavy'), usual: tooLight('usual'), light: tooLight('light') }
  const nearer = (pass: Pass) => passes[pass].mean < 2 * over
  const pass = PASSES.find(
    (each) => nearer(each) && chanceTooLight[each] <= MOST_CHANCE_TOO_LIGHT && passes[each].mean <= available,
  )
  const spent = sameDimension(over, over - available - tolerance) // above 0: even all of it leaves the arrow heavy
  return known(
    { next: pass ?? (chamfer > 0 ? 'chamfer' : 'stop'), chanceTooLight, over },
    {
      equation: 'P(too light) = Φ((removal + chamfer − remaining − tolerance)/√(u² + s²))',
      inputs: [
        term('weight still to trim', remaining.value, 'gr'),
        term('uncertainty of the weight to trim', remaining.sd, 'gr'),
        term('weight of the chamfer', chamfer, 'gr'),
        term('tolerance', tolerance, 'gr'),
        ...PASSES.flatMap((each) => [
          term(`removal of a ${each} pass`, passes[each].mean, 'gr'),
          term(`spread of a ${each} pass`, passes[each].sd, 'gr'),
        ]),
      ],
      result: PASSES.map((each) => term(`chance that a ${each} pass is too much`, chanceTooLight[each], '%')),
      source: ['CP', 'OWN'],
    },
    over + tolerance < 0
      ? [{ code: 'light-arrow', by: negated(over) }]
      : spent > 0
        ? [{ code: 'trim-into-bond', wanted: over, available }]
        : pass === undefined && over > tolerance
          ? [{ code: 'pass-too-coarse', above: over }]
          : [],
  )
}
