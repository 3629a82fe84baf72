/** How loud each finding is said: what can hurt someone or cannot be built stops; what is only good to know is a note. */
import type { Finding } from '../../core/finding'
import type { Level } from './level'

const STOPS: ReadonlySet<Finding['code']> = new Set<Finding['code']>([
  'too-cold-to-cure',
  'too-hot-to-cure',
  'clearance-short',
  'clearance-against-stiffness',
  'clearance-against-raw-shaft',
  'stiffness-against-raw-shaft',
  'raw-shaft-too-short',
  'envelope-already-left',
  'head-outsteers-vanes',
  'legal-figure-not-met',
  'no-length-short-enough',
  'no-length-long-enough',
  'no-mend',
  'trim-into-bond',
])
const NOTES: ReadonlySet<Finding['code']> = new Set<Finding['code']>([
  'extrapolated',
  'less-trusted-source',
  'speed-not-known',
  'rating-needs',
  'cut-moved-along',
  'cut-from-one-end',
  'full-draw-estimated',
  'full-draw-not-known',
  'envelope-not-known-past',
  'envelope-reach',
  'check-with-authority',
  'rule-silent-on-game',
  'too-few-values',
  'no-spread',
  'nothing-to-forecast',
])

export function findingLevel(finding: Finding): Level {
  if (finding.code === 'arrow-light-for-bow') return finding.severity === 'below-floor' ? 'stop' : 'look'
  if (STOPS.has(finding.code)) return 'stop'
  return NOTES.has(finding.code) ? 'note' : 'look'
}
