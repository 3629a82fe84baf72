import type { EnvelopeFinding } from '../../../core/envelope/findings'
import { showIn } from '../format'

/** What the envelope has to say, in a sentence. */
export function envelopeWords(finding: EnvelopeFinding): string {
  switch (finding.code) {
    case 'envelope-already-left':
      return `This arrow is outside before anything changes: ${finding.limits.join(', ')}. Put that right first, then ask how far it may drift.`
    case 'envelope-not-known-past':
      return `Past ${showIn(Math.abs(finding.change), finding.unit, 1)} ${finding.change < 0 ? 'less' : 'more'} ${finding.what} there is no figure to judge by.`
    case 'envelope-reach':
      return `How far to look must be 0 or more for ${finding.what}; ${showIn(finding.reach, finding.unit, 1)} was entered.`
  }
}
