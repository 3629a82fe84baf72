import type { WeightFinding } from '../../../core/weight/findings'
import { magnitude } from '../../../core/quantity'
import { counted, show } from '../format'

/** What weighing and the forecast have to say, in a sentence. */
export function weightWords(finding: WeightFinding): string {
  switch (finding.code) {
    case 'lot-off-catalogue':
      return `The ${counted(finding.pieces, 'piece')} of this lot weighed so far come to ${show(finding.mean, 'gr', 2)} each; the catalogue says ${show(finding.nominal, 'gr', 1)} ± ${show(finding.tolerance, 'gr', 1)}. Check that it is the right lot, or correct the catalogue’s weight or tolerance.`
    case 'surprising-reading':
      return `${show(finding.reading, 'gr', 1)} is a surprise: this lot has been giving ${show(finding.low, 'gr', 1)} to ${show(finding.high, 'gr', 1)}, about ${show(finding.expected, 'gr', 1)}. Clear the scale and weigh it again, or take it as it is.`
    case 'nothing-to-forecast':
      return 'There is no part to weigh up yet. Add a shaft, or read a weight.'
    case 'lighter-than-its-parts':
      return `The whole weighs ${show(finding.whole, 'gr', 1)}, less than its parts together, ${show(finding.parts, 'gr', 1)}, so nothing is left for the glue. Weigh the whole again, or correct the part that was read too heavy.`
    case 'scale-off':
      return finding.by > 0
        ? `The scale shows its check weight of ${show(finding.checkWeight, 'gr', 1)} too heavy by ${show(finding.by, 'gr', 2)}. Calibrate it before the next reading.`
        : `The scale shows its check weight of ${show(finding.checkWeight, 'gr', 1)} too light by ${show(magnitude(finding.by), 'gr', 2)}. Calibrate it before the next reading.`
  }
}
