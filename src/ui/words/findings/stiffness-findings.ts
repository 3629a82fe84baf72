import type { StiffnessFinding } from '../../../core/stiffness/findings'
import { show } from '../format'

/** What the stiffness models have to say, in a sentence. */
export function stiffnessWords(finding: StiffnessFinding): string {
  switch (finding.code) {
    case 'part-runs-backwards':
      return `The ${finding.part} ends at ${show(finding.to, 'in', 2)}, behind where it begins at ${show(finding.from, 'in', 2)}. Lengths run forward from the throat: swap its two ends.`
    case 'shaft-has-no-length':
      return `The shaft begins at ${show(finding.rear, 'in', 2)} and ends at ${show(finding.front, 'in', 2)} ahead of the throat, so nothing is left of it. Check the arrow length and where the shaft’s rear end stands.`
    case 'bore-wider-than-tube':
      return `The bore of the ${finding.part}, ${show(finding.bore, 'mm', 2)}, is wider than the ${finding.part} itself, ${show(finding.outer, 'mm', 2)}. Check both diameters.`
    case 'band-reversed':
      return `A reserve band runs from a low end above 0 to a higher one; ${show(finding.low, '1', 2)} to ${show(finding.high, '1', 2)} does not. Check the band in the shop’s rules.`
    case 'range-reversed':
      return `The shortest length to look at, ${show(finding.shortest, 'in', 2)}, is longer than the longest, ${show(finding.longest, 'in', 2)}. Check the raw length and what is cut off.`
    case 'reserve-below-band':
      return `Column reserve ${show(finding.reserve, '1', 2)} is below ${show(finding.band.min, '1', 2)}: this arrow is soft for the bow. A stiffer shaft, a shorter cut or less weight in front raises it. An arrow too soft for its bow can injure the archer.`
    case 'reserve-above-band':
      return `Column reserve ${show(finding.reserve, '1', 2)} is above ${show(finding.band.max, '1', 2)}: this arrow is stiffer than the bow asks for. A softer shaft, a longer cut or more weight in front lowers it.`
    case 'no-spine-stiff-enough':
      return `Even a shaft of ${show(finding.spine, 'in', 3)} static spine comes to a reserve of ${show(finding.reserve, '1', 2)}, below the ${show(finding.wanted, '1', 2)} wanted. Cut shorter, put less weight in front, or check the draw weight.`
    case 'no-spine-soft-enough':
      return `Even a shaft of ${show(finding.spine, 'in', 3)} static spine comes to a reserve of ${show(finding.reserve, '1', 2)}, above the ${show(finding.wanted, '1', 2)} wanted. Check the draw weight and the length.`
    case 'spine-range-cut-off':
      return `The ${finding.end} end of the spine range lies beyond ${show(finding.spine, 'in', 3)}, where no shafts are made; the range stops there.`
    case 'no-length-short-enough':
      return `Cut as short as ${show(finding.length, 'in', 2)}, the shaft is still too soft: reserve ${show(finding.reserve, '1', 2)}, ${show(finding.wanted, '1', 2)} wanted. Choose a stiffer shaft or less weight in front.`
    case 'no-length-long-enough':
      return `Left as long as ${show(finding.length, 'in', 2)}, the shaft is still stiffer than asked: reserve ${show(finding.reserve, '1', 2)}, at most ${show(finding.wanted, '1', 2)} wanted. Choose a softer shaft or more weight in front.`
  }
}
