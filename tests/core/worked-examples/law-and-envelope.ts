import { envelope } from '@/core/envelope/envelope'
import { bandMargins } from '@/core/envelope/margin'
import { lawCheck } from '@/core/law/law-check'
import { PLACE_RULES } from '@/core/law/place-rules'
import { bounds, known } from '@/core/outcome'
import { grains, inches, poundsForce, ratio, sum } from '@/core/quantity'
import { nockForce } from '@/core/stiffness/nock-force'
import type { WorkedExamples } from './worked-example'

export const lawExamples: WorkedExamples = {
  lawCheck: (n) =>
    lawCheck(PLACE_RULES[0]!, {
      drawWeight: poundsForce(n(72)),
      arrowWeight: grains(n(825)),
      arrowLength: inches(n(28)),
      head: { kind: 'broadhead', width: inches(n(1.25)) },
    }),
}

export const envelopeExamples: WorkedExamples = {
  envelope: (n) => {
    const critical = poundsForce(n(68))
    const peak = poundsForce(n(70))
    return envelope({
      what: 'draw weight',
      unit: 'lbf',
      furthestDown: poundsForce(n(20)),
      furthestUp: poundsForce(n(20)),
      evaluate: (change) => {
        const push = nockForce({ peakDraw: sum(peak, change), virtualMass: grains(50) }, grains(465))
        if (!push.ok) return push
        const reserve = ratio(critical / push.value)
        return known(bandMargins(reserve, bounds(ratio(0.75), ratio(1.3)), 'too soft', 'too stiff'), push.derivation)
      },
    })
  },
}
