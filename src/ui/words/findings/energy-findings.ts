import type { EnergyFinding } from '../../../core/energy/findings'
import { show } from '../format'

/** What the weight of an arrow on its bow has to say, in a sentence. */
export function energyWords(finding: EnergyFinding): string {
  const { at, limit, peakDrawWeight, severity } = finding
  const found = `${show(at, 'gr/lb', 2)} on a peak of ${show(peakDrawWeight, 'lbf', 1)}`
  switch (severity) {
    case 'below-floor':
      return `Too light for this bow: ${found}, below the customary floor of ${show(limit, 'gr/lb', 0)}. So light an arrow can wreck the bow and injure the archer. Add weight or lower the draw weight; do not shoot it.`
    case 'below-advised':
      return `Light for this bow: ${found}; ${show(limit, 'gr/lb', 0)} and more is recommended. Add weight, or check the peak draw weight.`
  }
}
