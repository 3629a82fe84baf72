import type { CutFinding, Landmark } from '../../../core/cut/findings'
import { show } from '../format'

const ASK: Readonly<Record<Landmark, string>> = { rest: 'the rest', 'riser front': 'the riser front', hand: 'the hand' }

/** What the models of the cut have to say, in a sentence. */
export function cutWords(finding: CutFinding): string {
  switch (finding.code) {
    case 'full-draw-not-known':
      return `Where ${finding.missing.map((what) => ASK[what]).join(' and ')} stands at full draw is not known. Best is a nocked arrow marked there at full draw; the draw length and its distance ahead of the grip pivot give an estimate.`
    case 'full-draw-estimated':
      return `${capital(ASK[finding.what])} at ${show(finding.at, 'in', 2)} from the throat is estimated from the draw length. Have a nocked arrow marked there at full draw before cutting.`
    case 'mark-against-draw-length':
      return `The mark puts ${ASK[finding.what]} at ${show(finding.marked, 'in', 2)} from the throat, the draw length puts it at ${show(finding.estimated, 'in', 2)}. Ask for the mark or the draw length again.`
    case 'clearance-short':
      return `Too near, ${finding.what}: ${show(finding.has, 'in', 2)}, at least ${show(finding.needs, 'in', 2)} wanted. ${CURE[finding.what]}`
    case 'clearance-against-stiffness':
      return `To stay clear at full draw the shaft must be at least ${show(finding.clear, 'in', 2)} long, for its stiffness at most ${show(finding.longest, 'in', 2)}. Choose a stiffer shaft or less weight in front, or check draw length and marks.`
    case 'clearance-against-raw-shaft':
      return `To stay clear at full draw the shaft must be at least ${show(finding.clear, 'in', 2)} long, and the raw shaft gives ${show(finding.longest, 'in', 2)}. Choose a longer raw shaft, or a head or outsert that holds the blades further ahead.`
    case 'stiffness-against-raw-shaft':
      return `The shaft comes into the reserve band only from ${show(finding.shortest, 'in', 2)} on, and the raw shaft gives ${show(finding.longest, 'in', 2)}: it is too stiff. Choose a softer shaft or more weight in front.`
    case 'cut-wish-moved':
      return `A cut of ${show(finding.wish, 'in', 2)} lies outside what clearance, stiffness and the raw shaft allow; ${show(finding.c2c, 'in', 3)} is the nearest that does not.`
    case 'raw-shaft-too-short':
      return `The raw shaft measures ${show(finding.raw, 'in', 2)}, the cut is to be ${show(finding.c2c, 'in', 2)}. Choose a shorter carbon to carbon or another shaft.`
    case 'too-little-to-cut':
      return `Only ${show(finding.spare, 'in', 2)} is to come off, less than the ${show(finding.least, 'in', 2)} a saw takes with its kerf. Leave the shaft as long as it is, or cut shorter.`
    case 'cut-from-one-end':
      return `Half of what comes off is less than the ${show(finding.least, 'in', 2)} a saw takes with its kerf, so all of it comes off the point end.`
    case 'cut-moved-along':
      return `Taking ${show(finding.wished, 'in', 2)} off the nock end would leave an end with less than the ${show(finding.least, 'in', 2)} a saw takes with its kerf; ${show(finding.offNock, 'in', 2)} is the nearest that does not.`
  }
}

const LONGER = 'Cut longer, or check the marks at full draw.'
const AHEAD =
  'Cut longer, or choose a head or outsert that holds the blades further ahead. Blades that reach the hand cut it.'
const CURE: Readonly<Record<Extract<CutFinding, { code: 'clearance-short' }>['what'], string>> = {
  'shaft front ahead of the rest': LONGER,
  'blades ahead of the riser': AHEAD,
  'blades ahead of the hand': AHEAD,
  'blades off the riser': 'Choose a narrower head, or a length that keeps the blades ahead of the riser.',
  'vane off the cable': 'Choose a lower vane, or turn the nock.',
  'vane tail ahead of the throat': 'Set the vanes further forward in the jig.',
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
