import type { BowFinding, Provenance } from '../../../core/bow/findings'
import { counted, show, showNumber, showRange } from '../format'

const PROVENANCE: Readonly<Record<Provenance, string>> = {
  chronograph: 'the chronograph readings',
  'one weight': 'readings of one arrow weight',
  'force-draw curve': 'the force-draw curve',
  rating: 'the bow’s rated speed',
}
const listed = (names: readonly string[]) => new Intl.ListFormat('en', { type: 'conjunction' }).format(names)

/** What the bow models have to say, in a sentence. */
export function bowWords(finding: BowFinding): string {
  switch (finding.code) {
    case 'too-few-points':
      return `There ${finding.count === 1 ? 'is' : 'are'} ${counted(finding.count, 'point')} in the ${finding.of}; at least ${showNumber(finding.needed, 0)} are needed. Add to the ${finding.of}.`
    case 'equal-weights':
      return `All chronograph readings are of one arrow weight, ${show(finding.mass, 'gr', 1)}. Shoot a second arrow at least 100 gr lighter or heavier, and the bow’s own virtual mass comes out too.`
    case 'weights-too-close':
      return `The arrows shot, ${showRange(finding.lightest, finding.heaviest, 'gr', 1, 'to')}, are close together for a chronograph that reads to ${show(finding.speedSd, 'ft/s', 1)}: the bow’s energy stays open by about ${show(finding.uncertainty, '%', 0)}. Shoot one that differs by 100 gr or more.`
    case 'speed-does-not-fall-with-weight':
      return `From ${show(finding.lightest, 'gr', 1)} to ${show(finding.heaviest, 'gr', 1)} the readings do not get slower, and no bow does that. Check which speed belongs to which weight, or shoot them again.`
    case 'negative-virtual-mass':
      return `The readings lose speed faster with weight than any bow does (a virtual mass of ${show(finding.virtualMass, 'gr', 1)}, give or take ${show(finding.sd, 'gr', 1)}). Check the arrow weights and speeds, or shoot them again.`
    case 'wild-reading':
      return `Reading ${showNumber(finding.position, 0)}, ${show(finding.speed, 'ft/s', 1)} at ${show(finding.mass, 'gr', 1)}, does not fit the others, which say about ${show(finding.expected, 'ft/s', 1)}. Check it, shoot it again, or take it out.`
    case 'readings-scatter':
      return `The readings scatter ${showNumber(finding.times, 1)} times as much as a chronograph’s ${show(finding.speedSd, 'ft/s', 1)} explains; the band is wider for it. Shoot each weight several times and enter the means.`
    case 'extrapolated':
      return `Extrapolated: ${show(finding.mass, 'gr', 1)} is beyond the weights shot (${showRange(finding.measured.min, finding.measured.max, 'gr', 1, 'to')}), so the speed is sure to ${show(finding.sd, 'ft/s', 1)} only. Shoot an arrow near the finished weight.`
    case 'draw-does-not-go-on':
      return `In the ${finding.curve}, point ${showNumber(finding.position, 0)} at ${show(finding.draw, 'in', 2)} does not go on from the one before. Enter the points in order of draw, each draw once.`
    case 'curve-starts-with-force':
      return `The force-draw curve starts with ${show(finding.force, 'lbf', 1)} in the string; at brace height there is none. Enter the point at brace height with 0, or some stored energy is missing.`
    case 'let-down-spans-another-draw':
      return `The let-down curve runs from ${showRange(finding.letDown.min, finding.letDown.max, 'in', 2, 'to')}, the draw from ${showRange(finding.draw.min, finding.draw.max, 'in', 2, 'to')}. Measure both over the same draw; until then no hysteresis is shown.`
    case 'let-down-above-draw':
      return `The let-down curve gives back ${show(finding.returned, 'ft·lbf', 1)}, more than the ${show(finding.stored, 'ft·lbf', 1)} stored. Check that the two curves are not swapped.`
    case 'no-power-stroke':
      return `A draw length of ${show(finding.drawLength, 'in', 2)} with a brace height of ${show(finding.braceHeight, 'in', 2)} leaves no power stroke. Check both; draw length is string to grip pivot plus 1¾ in.`
    case 'rating-needs':
      return `To scale the rated speed to this bow, the ${listed(finding.missing)} ${finding.missing.length === 1 ? 'is' : 'are'} needed too.`
    case 'less-trusted-source':
      return `The speed comes from ${PROVENANCE[finding.used]}, because ${listed(finding.instead.map((source) => PROVENANCE[source]))} could not be used. See what is said of them.`
    case 'speed-not-known':
      return 'Nothing is known of this bow’s speed. Enter a chronograph reading, a force-draw curve, or the rated speed with draw weight and draw length.'
  }
}
