/** A cut shaft with its rear end on: from here on the arrow's length is known. Inches forward from the throat, grains. */
import { inches } from '../../core/quantity'
import { rigidityFromSpine } from '../../core/stiffness/static-spine'
import type { OptionOf } from './options'
import type { Tail } from './tail'
import type { SearchProblem } from './wishes'

export interface Body {
  readonly shaft: OptionOf<'shaft'>
  readonly c2cIn: number
  readonly tail: Tail
  /** Throat to shaft front. */
  readonly lengthIn: number
  readonly shaftGr: number
  /** N·m². */
  readonly rigidity: number
  /** Shaft and tail. */
  readonly weightGr: number
  readonly momentGrIn: number
  readonly ownVar: number
  readonly sharedVar: number
  readonly spare: number
  readonly priceCents: number
  /** Which choice it is among all of shaft, cut length and tail. */
  readonly index: number
}

const ROUNDING = 1e-9 // steps

/** Every cut length asked for. */
export const cutLengths = ({ wishes: { c2cIn } }: SearchProblem): readonly number[] =>
  Array.from(
    { length: Math.floor((c2cIn.max - c2cIn.min) / c2cIn.step + ROUNDING) + 1 },
    (_, i) => c2cIn.min + i * c2cIn.step,
  )

/** Undefined where the raw shaft is too short to be cut so long. */
export function bodyOf(
  { shop }: SearchProblem,
  shaft: OptionOf<'shaft'>,
  c2cIn: number,
  tail: Tail,
  index: number,
): Body | undefined {
  const { rawLengthIn, staticSpineIn } = shaft.item.record
  if (c2cIn + shop.kerfIn > rawLengthIn + ROUNDING) return undefined
  const rigidity = rigidityFromSpine(inches(staticSpineIn))
  if (!rigidity.ok) return undefined
  const lengthIn = tail.standoutIn + c2cIn
  const shaftGr = shaft.weightGr * c2cIn
  return {
    shaft,
    c2cIn,
    tail,
    lengthIn,
    shaftGr,
    rigidity: rigidity.value,
    weightGr: shaftGr + tail.weightGr,
    momentGrIn: (shaftGr * (tail.standoutIn + lengthIn)) / 2 + tail.momentGrIn,
    ownVar: shaft.ownVar * c2cIn ** 2 + tail.ownVar,
    sharedVar: shaft.sharedVar * c2cIn ** 2 + tail.sharedVar,
    spare: Math.min(shaft.spare, tail.spare),
    priceCents: shaft.priceCents + tail.priceCents,
    index,
  }
}

/** What a wrap adds to the moment depends on where the nock puts the shaft's rear end. */
export const wrapMoment = (body: Body, wrapGr: number, wrapIn: number) => wrapGr * (body.tail.standoutIn + wrapIn / 2)
