import type { FlightFinding } from '../../../core/flight/findings'
import { magnitude } from '../../../core/quantity'
import { show } from '../format'

/** What the flight models have to say, in a sentence. */
export function flightWords(finding: FlightFinding): string {
  switch (finding.code) {
    case 'range-beyond-flight':
      return `The arrow does not reach ${show(finding.range, 'yd', 0)}: it falls before. Check the range, the arrow weight and the launch speed.`
    case 'no-ranges':
      return 'No range is asked for. Enter at least one, 20 yd for instance.'
    case 'speed-does-not-fall-with-distance':
      return `The far speed, ${show(finding.far, 'ft/s', 1)}, is not below the near one, ${show(finding.near, 'ft/s', 1)}. Check that the two are not swapped, or measure again.`
    case 'distances-too-close':
      return `Over ${show(finding.apart, 'yd', 1)} the arrow loses too little speed for readings good to ${show(finding.speedSd, 'ft/s', 1)}: the drag stays open by about ${show(finding.uncertainty, '%', 0)}. Measure farther apart, or take the mean of more shots.`
    case 'drag-beyond-published':
      return `A drag coefficient of ${show(finding.drag, '1', 2)} is outside those published for arrows, ${show(finding.low, '1', 1)} to ${show(finding.high, '1', 1)}. A broadhead may explain a high one; otherwise check speeds, distance and shaft diameter.`
    case 'head-outsteers-vanes':
      return `The vanes cannot steer this head: ${show(finding.angle, '°', 0)} off its path, the air takes hold ${show(magnitude(finding.margin), 'in', 1)} ahead of the balance point. Choose larger vanes or a smaller head.`
    case 'steering-margin-thin':
      return `The steering margin is thin: ${show(finding.margin, 'in', 1)} at its least, ${show(finding.share, '%', 1)} of the arrow, ${show(finding.wanted, '%', 0)} wanted. Larger vanes, a smaller head or more weight in front.`
    case 'broadhead-takes-steering':
      return `The broadhead leaves a margin of ${show(finding.broadhead, 'in', 1)}, the field point ${show(finding.fieldPoint, 'in', 1)}: do not expect them to group together. Sight in with the broadhead.`
  }
}
