import type { CureFinding } from '../../../core/cure/findings'
import { inCelsius, type Temperature } from '../../../core/quantity'
import { show, showNumber } from '../format'

const degrees = (t: Temperature) => `${showNumber(inCelsius(t), 0)} °C`

/** What curing has to say, in a sentence. */
export function cureWords(finding: CureFinding): string {
  switch (finding.code) {
    case 'too-cold-to-cure':
      return `At ${degrees(finding.at)} this glue does not cure; it needs ${degrees(finding.least)} at least. Bring the arrows into a warmer room: cold time counts for nothing.`
    case 'too-hot-to-cure':
      return `${degrees(finding.at)} is too hot: this glue stays below ${degrees(finding.most)}. Let the arrows cool, and check the bond before anything is shot.`
    case 'cure-times-reversed':
      return `A glue can be handled before it is shot, and shot before it is fully cured; ${show(finding.handle, 'h', 1)}, ${show(finding.shoot, 'h', 1)}, ${show(finding.full, 'h', 1)} are not in that order. Correct the glue’s times.`
  }
}
