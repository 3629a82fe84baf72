/** Kinds of part by their place on the arrow, where several kinds can take the same one. */
import type { PartKind } from './part'

/** What takes the head, at the front of the shaft. */
export const FRONT_KINDS: readonly PartKind[] = ['insert', 'half-out', 'outsert']
export const HEAD_KINDS: readonly PartKind[] = ['broadhead', 'field point']

export const isFront = (kind: PartKind): boolean => FRONT_KINDS.includes(kind)
export const isHead = (kind: PartKind): boolean => HEAD_KINDS.includes(kind)
