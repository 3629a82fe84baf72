/** What no pairing of a tray can be better than: what is not exact is told with how far it may be from the best. */
import { type Minimise, missOf, type PairItem, type Tray, type Worth } from './pairing'

export function pairBound(tray: Tray, minimise: Minimise, found: Worth): Worth {
  const reach = tray.lists[0]!.map((arrow) => reachOf(tray, arrow, 0))
  // Of all weights an arrow could have, taken as if there were one for every grain between the ends.
  const missGr = reach.reduce((sum, { low, high, givesGr }) => sum + leastMiss(tray, low, high, givesGr), 0)
  if (minimise === 'spread') return { missGr, value: leastSpread(tray) }
  // Where none misses, each arrow is trimmed by at least what it is over the tolerance.
  const over = (gr: number) => Math.max(0, gr - tray.targetGr - tray.toleranceGr)
  const value =
    found.missGr > 0 ? 0 : Math.max(over(leastMean(tray)) * reach.length, sum(reach.map(({ low }) => over(low))))
  return { missGr, value }
}

interface Reach {
  readonly low: number
  readonly high: number
  readonly givesGr: number
}

/** The weights an item can be part of. */
function reachOf({ lists, besidesGr }: Tray, item: PairItem, own: number): Reach {
  const others = lists.filter((_, i) => i !== own)
  return {
    low: besidesGr + item.gr + sum(others.map((list) => Math.min(...list.map(({ gr }) => gr)))),
    high: besidesGr + item.gr + sum(others.map((list) => Math.max(...list.map(({ gr }) => gr)))),
    givesGr: item.givesGr + sum(others.map((list) => Math.max(...list.map(({ givesGr }) => givesGr)))),
  }
}

function leastMiss(tray: Tray, low: number, high: number, givesGr: number): number {
  const nearest = Math.min(Math.max(tray.targetGr, low), high)
  return missOf(tray, nearest, givesGr)
}

/** An item that must be used pulls its arrow to one side; the mean of the set is fixed when every item is used. */
function leastSpread(tray: Tray): number {
  const { lists, besidesGr } = tray
  const arrows = lists[0]!.length
  const full = lists.flatMap((list, own) =>
    list.length === arrows ? [list.map((item) => reachOf(tray, item, own))] : [],
  )
  const apart = full.map(
    (reach) => Math.max(...reach.map(({ low }) => low)) - Math.min(...reach.map(({ high }) => high)),
  )
  if (full.length < lists.length) return Math.max(0, ...apart)
  const mean = besidesGr + sum(lists.map((list) => sum(list.map(({ gr }) => gr)) / arrows))
  const pulled = full.flat().flatMap(({ low, high }) => [low - mean, mean - high])
  return Math.max(0, ...apart, ...pulled)
}

/** The least the mean weight can be: the lightest items of every list. */
function leastMean({ lists, besidesGr }: Tray): number {
  const arrows = lists[0]!.length
  const lightest = lists.map((list) =>
    list
      .map(({ gr }) => gr)
      .toSorted((a, b) => a - b)
      .slice(0, arrows),
  )
  return besidesGr + sum(lightest.map((list) => sum(list) / arrows))
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, n) => total + n, 0)
