import type { Finding } from '../finding'
import { type Outcome, known, term } from '../outcome'
import { type Length, type Ratio, difference, ratio } from '../quantity'
import { type Steered, type Steering, WANTED_MARGIN, steering } from './steering'

export interface HeadComparison {
  readonly broadhead: Steering
  readonly fieldPoint: Steering
  /** By how much the broadhead's least margin is smaller. */
  readonly lost: Length
}

/** From a third of the margin on the two heads are not expected to group together: assumed, no source [CP]. */
export const MUCH_LOST = ratio(1 / 3)

/**
 * The same arrow with a broadhead and with a field point: blades are fins in front, and take some of what the vanes do.
 *
 * @returns both and the margin lost, with `broadhead-takes-steering` from {@link MUCH_LOST} on, and what {@link steering}
 * says of the broadhead; or what it answers where it has no answer
 */
export function broadheadAgainstFieldPoint(
  withBroadhead: Steered,
  withFieldPoint: Steered,
  wanted: Ratio = WANTED_MARGIN,
): Outcome<HeadComparison> {
  const broadhead = steering(withBroadhead, wanted)
  if (!broadhead.ok) return broadhead
  const fieldPoint = steering(withFieldPoint, wanted)
  if (!fieldPoint.ok) return fieldPoint
  const bladed = broadhead.value.least.margin
  const plain = fieldPoint.value.least.margin
  const lost = difference(plain, bladed)
  const findings: readonly Finding[] =
    lost > MUCH_LOST * Math.abs(plain)
      ? [{ code: 'broadhead-takes-steering', broadhead: bladed, fieldPoint: plain }]
      : []
  return known(
    { broadhead: broadhead.value, fieldPoint: fieldPoint.value, lost },
    {
      equation: 'margin lost = least margin with the field point − least margin with the broadhead',
      inputs: [
        term('least margin with the field point', plain, 'in', 'computed'),
        term('least margin with the broadhead', bladed, 'in', 'computed'),
      ],
      result: [term('margin lost', lost, 'in')],
      source: ['BARROWMAN', 'GALEJS'],
      steps: [broadhead.derivation, fieldPoint.derivation],
    },
    [...findings, ...broadhead.findings],
  )
}
