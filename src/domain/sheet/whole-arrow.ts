/** Whether a plan names what makes an arrow: what is said of a whole one, too light for its bow, says nothing of a shaft by itself. */
import type { PartKind } from '../stock/part'

const FRONT: readonly PartKind[] = ['insert', 'half-out', 'outsert']
const HEAD: readonly PartKind[] = ['broadhead', 'field point']
const PLACES: readonly (readonly PartKind[])[] = [['shaft'], ['nock'], FRONT, HEAD]

export const isFront = (kind: PartKind): boolean => FRONT.includes(kind)
export const isHead = (kind: PartKind): boolean => HEAD.includes(kind)

/** A shaft, a nock, something in front that takes a head, and a head. */
export const isWholeArrow = (kinds: readonly PartKind[]): boolean =>
  PLACES.every((place) => kinds.some((kind) => place.includes(kind)))
