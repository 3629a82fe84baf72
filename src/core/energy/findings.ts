import type { Force, MassPerForce } from '../quantity'
import type { SourceKey } from '../sources'

/** The arrow is light for the bow: `below-floor` can wreck a bow and hurt the archer, `below-advised` is on the light side. */
export interface LightForBow {
  readonly code: 'arrow-light-for-bow'
  readonly severity: 'below-floor' | 'below-advised'
  readonly at: MassPerForce
  readonly limit: MassPerForce
  readonly peakDrawWeight: Force
  readonly source: SourceKey
}

export type EnergyFinding = LightForBow
