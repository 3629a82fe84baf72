import { type Angle, greatest, inDegrees, type Length, magnitude, scaled, sum } from '../quantity'

export interface Vanes {
  readonly count: number
  /** From the shaft's wall to the vane's outer edge. */
  readonly height: Length
  readonly shaftRadius: Length
  /** Of one of them, from up, clockwise as the archer sees it. */
  readonly cockVane: Angle
}

const RADIANS = Math.PI / 180

/**
 * How far the vanes stand out sideways from the axis, towards cables that run upright beside the nocked arrow.
 *
 *   reach = max over the vanes of (r + h)·sin θ, θ from up towards the cables' side; r at least
 *
 * @param side where the cables run; undefined: on either, and the further reach counts
 *
 * Source: [OWN], plain geometry.
 * Error: a vane set askew stands a little further round at its tail than θ says; the rule's least is to cover it.
 */
export function vaneReach({ count, height, shaftRadius, cockVane }: Vanes, side: 'right' | 'left' | undefined): Length {
  const edge = sum(shaftRadius, height)
  const out = Array.from({ length: count }, (_, k) => {
    const sine = Math.sin((inDegrees(cockVane) + (360 * k) / count) * RADIANS)
    const towards = scaled(edge, side === 'left' ? -sine : sine)
    return side === undefined ? magnitude(towards) : towards
  })
  return greatest(shaftRadius, ...out)
}
