/**
 * How grains come off the front: from the rear, first off the weights stacked on the post, then off the post down to the
 * bond that must stay, the last of it by breaking the edge. Inches and grains.
 */
import type { PartOf } from '../stock/part'
import { type Bar, barGrainsPerInch, edgeGrains } from './metal'
import type { OptionOf } from './options'

const MM_PER_INCH = 25.4

/** A stretch that can be trimmed, rearmost first. */
export interface Stretch {
  readonly lengthIn: number
  readonly perInchGr: number
  /** Of its length, what may go. */
  readonly givesIn: number
}

export interface PostTrim {
  /** The stacked weights one by one, then the post. */
  readonly stretches: readonly Stretch[]
  /** All that may come off by length, gr. */
  readonly availableGr: number
  /** What breaking the edge takes, gr; a smaller trim than that is left alone. */
  readonly edgeGr: number
}

const NONE: PostTrim = { stretches: [], availableGr: 0, edgeGr: 0 }

export function postTrimOf(
  post: PartOf<'insert' | 'half-out'>,
  rearWeights: OptionOf<'rear weight'> | undefined,
  chamferMm: number,
): PostTrim {
  const bar: Bar = { material: post.material, diameterMm: post.postDiameterMm, boreMm: post.postBoreMm }
  const perInchGr = barGrainsPerInch(bar)
  if (!post.trimmable || perInchGr === undefined) return NONE
  const givesIn = Math.max(0, post.postLengthIn - post.leastBondMm / MM_PER_INCH)
  const last: Stretch = { lengthIn: post.postLengthIn, perInchGr, givesIn }
  if (rearWeights === undefined) {
    return { stretches: [last], availableGr: givesIn * perInchGr, edgeGr: edgeGrains(bar, chamferMm) }
  }
  const { material, diameterMm, lengthIn } = rearWeights.item.record
  const stack: Bar = { material, diameterMm, boreMm: 0 }
  const stackPerInchGr = barGrainsPerInch(stack)
  if (stackPerInchGr === undefined) return NONE
  const one: Stretch = { lengthIn, perInchGr: stackPerInchGr, givesIn: lengthIn }
  const stretches = [...Array.from({ length: rearWeights.count }, () => one), last]
  return {
    stretches,
    availableGr: stretches.reduce((sum, stretch) => sum + stretch.givesIn * stretch.perInchGr, 0),
    edgeGr: edgeGrains(stack, chamferMm),
  }
}

/** What really comes off for a wanted trim: nothing for one that the edge alone would overshoot. */
export const comesOff = ({ edgeGr }: PostTrim, trimGr: number) => (trimGr > edgeGr ? trimGr : 0)

export const ROUNDING_GR = 1e-9

/** Length off each stretch, rearmost first. `edge`: the stretch that the edge is broken on. */
export function cutsOf(
  { stretches, edgeGr }: PostTrim,
  trimGr: number,
): { readonly cutIn: number[]; readonly edge: number } {
  let left = Math.max(0, trimGr - edgeGr)
  let edge = -1
  const cutIn = stretches.map(({ lengthIn, perInchGr }, i) => {
    const take = Math.min(lengthIn, left / perInchGr)
    left -= take * perInchGr
    if (left < ROUNDING_GR) left = 0
    if (take > 0) edge = i
    return take
  })
  return { cutIn, edge }
}
