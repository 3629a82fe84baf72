import type { Finding } from '../finding'
import { type Outcome, bounds, known, term } from '../outcome'
import { type Force, type Mass, type MassPerForce, kilogramsPerNewton, poundsForce, quantity } from '../quantity'
import { outside, refusal } from '../refusal'
import type { SourceKey } from '../sources'
import { FLYING_BOUNDS } from './flying-bounds'

/** Peak draw weight of a bow drawn by hand, with room to spare. */
export const DRAW_WEIGHT_BOUNDS = bounds(poundsForce(1), poundsForce(300))

/** Below the first the bow is shot nearly dry; below the second the arrow is lighter than the industry recommends. */
export const LIGHT_LIMITS = Object.freeze([
  { severity: 'below-floor', limit: quantity(5, 'gr/lb'), source: 'FLOOR-GPP' },
  { severity: 'below-advised', limit: quantity(6, 'gr/lb'), source: 'WSR00-06-090' },
] as const satisfies readonly { severity: string; limit: MassPerForce; source: SourceKey }[])

const ROUNDING = 1e-12 // 350 gr on 70 lb is 5 gr/lb, whatever the last bit says

/**
 * Finished weight per pound of peak draw weight, gpp.
 *
 * @returns gpp, with `arrow-light-for-bow` below either of {@link LIGHT_LIMITS}; or `outside-model`
 *
 * Source: floor of 5 [FLOOR-GPP], [F1544]; recommended 6 [WSR00-06-090].
 */
export function grainsPerPound(mass: Mass, peakDrawWeight: Force): Outcome<MassPerForce> {
  const refused = refusal([
    ...outside('finished weight', mass, FLYING_BOUNDS.mass, 'gr'),
    ...outside('peak draw weight', peakDrawWeight, DRAW_WEIGHT_BOUNDS, 'lbf'),
  ])
  if (refused) return refused
  const at = kilogramsPerNewton(mass / peakDrawWeight)
  const passed = LIGHT_LIMITS.find(({ limit }) => at < limit * (1 - ROUNDING))
  const findings: readonly Finding[] = passed ? [{ code: 'arrow-light-for-bow', at, peakDrawWeight, ...passed }] : []
  return known(
    at,
    {
      equation: 'gpp = m / F_peak',
      inputs: [term('finished weight', mass, 'gr'), term('peak draw weight', peakDrawWeight, 'lbf')],
      result: [term('grains per pound', at, 'gr/lb')],
      source: ['FLOOR-GPP', 'WSR00-06-090'],
    },
    findings,
  )
}
