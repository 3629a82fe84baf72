/**
 * Who goes with whom: shafts, inserts, heads and whatever else was weighed piece by piece, so that little has to be ground
 * off, or the weights lie close together, and every arrow can be brought to the target.
 *
 * Two lists are paired exactly. More are improved one list at a time, each time exactly with the others as they are, from
 * several beginnings; a small tray is then searched to the end. What is not known to be the best says how far it may be
 * from it.
 */
import { pairBound } from './pair-bound'
import { pairByMasks } from './pair-by-masks'
import { pairExactly } from './pair-exactly'
import { type Begun, pairTwo } from './pair-two'
import { type Minimise, missOf, pairedAt, type PairItem, type Tray, type Worth, worthBefore, worthOf } from './pairing'
import { type PairingFinding, trayProblems } from './tray-problems'

export interface PairedArrow {
  /** One of each list, the arrow's own first. */
  readonly items: readonly PairItem[]
  readonly beforeGr: number
  readonly trimGr: number
  readonly finishedGr: number
  /** Grains by which it cannot be brought inside the tolerance. */
  readonly missGr: number
}

export interface PairedSet {
  readonly arrows: readonly PairedArrow[]
  readonly trimGr: number
  /** Heaviest less lightest before trimming. */
  readonly spreadGr: number
  /** Items that no arrow took, by list. */
  readonly left: readonly (readonly PairItem[])[]
  readonly worth: Worth
  /** No pairing is better than this; equal to the worth when the pairing is known to be the best. */
  readonly bound: Worth
  readonly isBest: boolean
}

export interface Paired {
  readonly set: PairedSet | undefined
  readonly findings: readonly PairingFinding[]
}

const BEGINNINGS = 24
const SAME_GR = 1e-9

type Choice = readonly (readonly number[])[]

export function pairSet(tray: Tray, minimise: Minimise): Paired {
  const problems = trayProblems(tray)
  if (problems.length > 0) return { set: undefined, findings: problems }
  const [arrows, ...lists] = tray.lists
  const identity = lists.map(() => arrows!.map((_, i) => i))
  if (lists.length < 2) {
    const choice = lists.length === 0 ? identity : improved(tray, identity, minimise)
    return told(tray, choice, minimise, true)
  }
  let best = improved(tray, identity, minimise)
  const roll = dice()
  for (let beginning = 1; beginning < BEGINNINGS; beginning++) {
    const found = improved(
      tray,
      lists.map((list) => dealt(list.length, arrows!.length, roll)),
      minimise,
    )
    if (worthBefore(worthOf(tray, found, minimise), worthOf(tray, best, minimise)) < 0) best = found
  }
  const exact =
    minimise === 'trimming'
      ? pairByMasks(tray)
      : pairExactly(tray, minimise, { choice: best, worth: worthOf(tray, best, minimise) })?.choice
  return told(tray, exact ?? best, minimise, exact !== undefined)
}

/** Deals out one list after the other anew, as well as can be with the others as they are, until nothing gets better. */
function improved(tray: Tray, start: Choice, minimise: Minimise): Choice {
  let choice = start
  let worth = worthOf(tray, choice, minimise)
  for (let unchanged = 0, list = 0; unchanged < choice.length; list = (list + 1) % choice.length) {
    const begun = tray.lists[0]!.map((_, arrow) => without(tray, choice, arrow, list + 1))
    const { items } = pairTwo(tray, begun, tray.lists[list + 1]!, minimise)
    const next = choice.map((own, i) => (i === list ? items : own))
    const better = worthOf(tray, next, minimise)
    if (worthBefore(better, worth) < -SAME_GR) {
      choice = next
      worth = better
      unchanged = 0
    } else unchanged += 1
  }
  return choice
}

/** An arrow without what it takes of one list. */
function without(tray: Tray, choice: Choice, arrow: number, list: number): Begun {
  const { weightGr, givesGr } = pairedAt(tray, choice, arrow)
  const item = tray.lists[list]![choice[list - 1]![arrow]!]!
  return { weightGr: weightGr - item.gr, givesGr: givesGr - item.givesGr }
}

function told(tray: Tray, choice: Choice, minimise: Minimise, isExact: boolean): Paired {
  const [arrows, ...lists] = tray.lists
  const paired = arrows!.map((arrow, i): PairedArrow => {
    const { weightGr, givesGr } = pairedAt(tray, choice, i)
    const trimGr = Math.min(Math.max(0, weightGr - tray.targetGr), givesGr)
    const items = [arrow, ...lists.map((list, l) => list[choice[l]![i]!]!)]
    return { items, beforeGr: weightGr, trimGr, finishedGr: weightGr - trimGr, missGr: missOf(tray, weightGr, givesGr) }
  })
  const worth = worthOf(tray, choice, minimise)
  const weights = paired.map(({ beforeGr }) => beforeGr)
  const bound = isExact ? worth : pairBound(tray, minimise, worth)
  const missing = paired.filter(({ missGr }) => missGr > 0)
  const findings: PairingFinding[] =
    missing.length === 0
      ? []
      : [{ code: 'arrows-miss-target', arrows: missing.map(({ items }) => items[0]!.id), missGr: worth.missGr }]
  return {
    set: {
      arrows: paired,
      trimGr: paired.reduce((sum, { trimGr }) => sum + trimGr, 0),
      spreadGr: Math.max(...weights) - Math.min(...weights),
      left: lists.map((list, l) => list.filter((_, i) => !choice[l]!.includes(i))),
      worth,
      bound,
      isBest: worthBefore(worth, bound) <= SAME_GR,
    },
    findings,
  }
}

/** Some items of a list in some order, the same at every run. */
function dealt(size: number, count: number, roll: () => number): readonly number[] {
  const all = Array.from({ length: size }, (_, i) => i)
  for (let i = size - 1; i > 0; i--) {
    const j = Math.floor(roll() * (i + 1))
    ;[all[i], all[j]] = [all[j]!, all[i]!]
  }
  return all.slice(0, count)
}

/** Even numbers from 0 to 1, always the same (Lehmer's generator with Park and Miller's numbers, from memory). */
function dice(): () => number {
  let state = 1
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}
