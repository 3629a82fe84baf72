/** What is said of any head on any arrow. */
import type { Interchange, InterchangeFinding } from '../../domain/search/pairing/interchange'
import { counted, showIn } from './format'

export function interchangeWords(finding: InterchangeFinding): string {
  switch (finding.code) {
    case 'no-arrows':
      return 'No arrow is finished and weighed yet.'
    case 'no-heads':
      return 'No head that screws into these arrows is on the shelf.'
    case 'fewer-heads-than-arrows':
      return `${counted(finding.heads, 'head')} for ${counted(finding.arrows, 'arrow')}: weigh and number as many heads as there are arrows.`
    case 'not-usable':
      return 'A weight or a balance point here is no sensible number. Look at the readings of the final inspection.'
  }
}

const HAIR = 1e-9 // gr; what binary fractions do to a difference of typed numbers

/** Whether it matters which head goes where. */
export function freelyWords({ furthest }: Interchange, targetGr: number, toleranceGr: number): string {
  const off = furthest.gr - targetGr
  const by = showIn(Math.abs(off), 'gr', 1)
  if (Math.abs(off) <= toleranceGr + HAIR) return `any on any; at most ${by} off the number`
  return `${off < 0 ? 'light' : 'heavy'} by ${by} at the worst`
}
