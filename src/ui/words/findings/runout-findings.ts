import type { RunOutFinding } from '../../../core/runout/findings'
import { show, showNumber } from '../format'

/** What the models of run-out have to say, in a sentence. */
export function runOutWords(finding: RunOutFinding): string {
  switch (finding.code) {
    case 'places-not-whole':
      return `An insert can be turned to a whole number of places, not to ${showNumber(finding.places, 1)}. Enter how many marks there are around it.`
    case 'no-stations':
      return 'No run-out was read between the rollers. Read it at one station at least, five is usual.'
    case 'supports-too-close':
      return `The front roller stands at ${show(finding.front, 'in', 2)} and the rear one at ${show(finding.rear, 'in', 2)} from the nock end. They must be at least ${show(finding.least, 'in', 1)} apart, the rear one nearer to the nock end.`
    case 'stations-coincide':
      return `At ${show(finding.at, 'in', 2)} two stations, or a station and a roller, stand less than ${show(finding.least, 'in', 2)} apart. Check where each was read.`
    case 'window-longer-than-shaft':
      return `A cut of ${show(finding.window, 'in', 2)} does not come out of a raw shaft of ${show(finding.raw, 'in', 2)}. Choose a shorter carbon to carbon or a longer shaft.`
    case 'run-out-extrapolated':
      return `The cut reaches ${show(finding.by, 'in', 2)} past the outermost roller, where nothing was read; there the bend is taken to go on. Set the rollers further out to be sure.`
  }
}
