/** A tray of weighed parts, and how well it is paired. Grains throughout. */
export interface PairItem {
  readonly id: string
  readonly gr: number
  /** What can be trimmed off it; a post has some, a head none. */
  readonly givesGr: number
}

export interface Tray {
  /** The first list is the arrows to be: each of them is built. Of the others each arrow takes one. */
  readonly lists: readonly (readonly PairItem[])[]
  /** What else goes onto every arrow: glue, parts weighed by the batch. */
  readonly besidesGr: number
  readonly targetGr: number
  readonly toleranceGr: number
}

/** What is to be small: all that has to be ground off, or how far the untrimmed weights lie apart. */
export type Minimise = 'trimming' | 'spread'

/**
 * How good a pairing is, the less the better. First what arrows miss the target by with all that their posts can give;
 * then what is to be minimised.
 */
export interface Worth {
  readonly missGr: number
  readonly value: number
}
const SAME_GR = 1e-9
export const worthBefore = (a: Worth, b: Worth): number =>
  Math.abs(a.missGr - b.missGr) > SAME_GR ? a.missGr - b.missGr : a.value - b.value

/** Grains by which an arrow of this weight cannot be brought inside the tolerance. */
export const missOf = ({ targetGr, toleranceGr }: Tray, weightGr: number, givesGr: number) =>
  Math.max(0, targetGr - toleranceGr - weightGr, weightGr - targetGr - toleranceGr - givesGr)

/** Of two pairings with the same grains to trim the more even is better, by this much a squared grain. */
const UNEVEN = 1e-4

/** What an arrow adds to the value when trimming is minimised. */
export function trimCost({ targetGr }: Tray, weightGr: number, givesGr: number): number {
  const trim = Math.min(Math.max(0, weightGr - targetGr), givesGr)
  return trim + UNEVEN * trim * trim
}

/** @param choice by list after the first: for each arrow the index of the item it takes */
export function worthOf(tray: Tray, choice: readonly (readonly number[])[], minimise: Minimise): Worth {
  let missGr = 0
  let cost = 0
  let lightest = Infinity
  let heaviest = -Infinity
  for (let arrow = 0; arrow < tray.lists[0]!.length; arrow++) {
    const { weightGr, givesGr } = pairedAt(tray, choice, arrow)
    missGr += missOf(tray, weightGr, givesGr)
    cost += trimCost(tray, weightGr, givesGr)
    lightest = Math.min(lightest, weightGr)
    heaviest = Math.max(heaviest, weightGr)
  }
  return { missGr, value: minimise === 'trimming' ? cost : heaviest - lightest }
}

export function pairedAt({ lists, besidesGr }: Tray, choice: readonly (readonly number[])[], arrow: number) {
  let weightGr = besidesGr
  let givesGr = 0
  for (let list = 0; list < lists.length; list++) {
    const item = lists[list]![list === 0 ? arrow : choice[list - 1]![arrow]!]!
    weightGr += item.gr
    givesGr += item.givesGr
  }
  return { weightGr, givesGr }
}
