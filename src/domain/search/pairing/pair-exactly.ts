/**
 * Every pairing of a small tray that could be the best, arrow by arrow, left as soon as what is already dealt out is no
 * better than the best so far. Gives up after so many steps, and then says so.
 */
import { type Minimise, missOf, type Tray, trimCost, type Worth, worthBefore } from './pairing'

const MOST_STEPS = 3_000_000

/** @returns the best choice there is, or undefined when the tray is too large to be sure */
export function pairExactly(
  tray: Tray,
  minimise: Minimise,
  start: { readonly choice: readonly (readonly number[])[]; readonly worth: Worth },
): { readonly choice: readonly (readonly number[])[]; readonly worth: Worth } | undefined {
  const [arrows, ...lists] = tray.lists
  const count = arrows!.length
  // The heaviest and the lightest arrows first: they leave the least room.
  const order = arrows!
    .map((_, i) => i)
    .toSorted((a, b) => Math.abs(arrows![b]!.gr - mean(arrows!)) - Math.abs(arrows![a]!.gr - mean(arrows!)))
  const used = lists.map((list) => new Uint8Array(list.length))
  const taken = lists.map(() => Array.from({ length: count }, () => 0))
  let best = start
  let steps = 0

  function deal(place: number, missGr: number, cost: number, low: number, high: number): boolean {
    if (place === count) {
      const worth = { missGr, value: minimise === 'trimming' ? cost : high - low }
      if (worthBefore(worth, best.worth) < 0) best = { choice: taken.map((items) => [...items]), worth }
      return true
    }
    const arrow = order[place]!
    const { gr, givesGr } = arrows![arrow]!
    return choose(place, arrow, 0, tray.besidesGr + gr, givesGr, missGr, cost, low, high)
  }

  function choose(
    place: number,
    arrow: number,
    list: number,
    weightGr: number,
    givesGr: number,
    missGr: number,
    cost: number,
    low: number,
    high: number,
  ): boolean {
    if (list === lists.length) {
      steps += 1
      if (steps > MOST_STEPS) return false
      const miss = missGr + missOf(tray, weightGr, givesGr)
      const spent = cost + trimCost(tray, weightGr, givesGr)
      const lowest = Math.min(low, weightGr)
      const highest = Math.max(high, weightGr)
      const worth = { missGr: miss, value: minimise === 'trimming' ? spent : highest - lowest }
      if (worthBefore(worth, best.worth) >= 0) return true
      return deal(place + 1, miss, spent, lowest, highest)
    }
    const items = lists[list]!
    for (let i = 0; i < items.length; i++) {
      if (used[list]![i] === 1) continue
      used[list]![i] = 1
      taken[list]![arrow] = i
      const { gr, givesGr: gives } = items[i]!
      const goesOn = choose(place, arrow, list + 1, weightGr + gr, givesGr + gives, missGr, cost, low, high)
      used[list]![i] = 0
      if (!goesOn) return false
    }
    return true
  }

  return deal(0, 0, 0, Infinity, -Infinity) ? best : undefined
}

const mean = (items: readonly { readonly gr: number }[]) => items.reduce((sum, { gr }) => sum + gr, 0) / items.length
