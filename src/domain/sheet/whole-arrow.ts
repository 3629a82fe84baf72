/** Whether a plan names what makes an arrow: what is said of a whole one, too light for its bow, says nothing of a shaft by itself. */
import type { PartKind } from '../stock/part'
import { FRONT_KINDS, HEAD_KINDS } from '../stock/part-places'

const PLACES: readonly (readonly PartKind[])[] = [['shaft'], ['nock'], FRONT_KINDS, HEAD_KINDS]

/** A shaft, a nock, something in front that takes a head, and a head. */
export const isWholeArrow = (kinds: readonly PartKind[]): boolean =>
  PLACES.every((place) => kinds.some((kind) => place.includes(kind)))
