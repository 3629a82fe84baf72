import type { FixingEvent } from '../../../core/trim/fixing-events'
import type { TrimFinding } from '../../../core/trim/findings'
import { show } from '../format'

const FIXED: Readonly<Record<FixingEvent, string>> = {
  'shaft cut': 'the shaft is cut',
  fletched: 'the vanes are on',
  'post bonded': 'the post is bonded',
  packed: 'the arrow is packed',
}

/** What trimming and mending have to say, in a sentence. */
export function trimWords(finding: TrimFinding): string {
  switch (finding.code) {
    case 'trim-into-bond': {
      const short = `${show(finding.wanted, 'gr', 1)} must come off and the post can give ${show(finding.available, 'gr', 1)}`
      return finding.leastBond === undefined
        ? `${short}. Stop at the bond that must stay; choose a lighter head, collar or insert for the rest.`
        : `${short} before less than ${show(finding.leastBond, 'mm', 1)} of bond is left. Choose a lighter head, collar or insert, or raise the target.`
    }
    case 'light-arrow':
      return `The arrow is light by ${show(finding.by, 'gr', 1)}. Trimming cannot mend that: add weight, or choose a heavier part.`
    case 'chamfer-takes-more':
      return `Breaking the edge takes ${show(finding.chamfer, 'gr', 2)}, more than the ${show(finding.wanted, 'gr', 2)} there is to take. Grind nothing; make the chamfer smaller.`
    case 'pass-too-coarse':
      return `The arrow is still heavy by ${show(finding.above, 'gr', 1)}, and even a light pass would probably take too much. Take it off by hand, or leave it.`
    case 'no-mend': {
      const fixed = finding.fixed.map((event) => FIXED[event]).join(', ')
      const why = fixed === '' ? '' : ` Now that ${fixed}, those parts stay as they are.`
      return `Nothing on the list makes up ${show(finding.short, 'gr', 1)}.${why} Add a heavier part to the list, or decide what to do with a light arrow.`
    }
    case 'no-such-part':
      return `“${finding.change}” would replace the ${finding.part}, and this arrow has none. Choose a part that is on the sheet.`
  }
}
