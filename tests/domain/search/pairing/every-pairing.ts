/**
 * Brute force: every way to deal every list out to the arrows. A branch is left only when what is already dealt out is
 * worse than the best whole pairing: what is to be minimised never falls as arrows are added.
 */
import { type Minimise, missOf, type Tray, trimCost, type Worth, worthBefore } from '@/domain/search/pairing/pairing'

export function everyPairing(tray: Tray, minimise: Minimise): Worth {
  const [arrows, ...lists] = tray.lists
  const used = lists.map((list) => list.map(() => false))
  let best: Worth = { missGr: Infinity, value: Infinity }
  const deal = (
    arrow: number,
    list: number,
    gr: number,
    gives: number,
    missGr: number,
    cost: number,
    low: number,
    high: number,
  ) => {
    if (list === lists.length) {
      const miss = missGr + missOf(tray, gr, gives)
      const spent = cost + trimCost(tray, gr, gives)
      const [lowest, highest] = [Math.min(low, gr), Math.max(high, gr)]
      const worth = { missGr: miss, value: minimise === 'trimming' ? spent : highest - lowest }
      if (miss > best.missGr + 1e-9 || worthBefore(worth, best) >= 0) return
      if (arrow + 1 === arrows!.length) best = worth
      else {
        const next = arrows![arrow + 1]!
        deal(arrow + 1, 0, tray.besidesGr + next.gr, next.givesGr, miss, spent, lowest, highest)
      }
      return
    }
    lists[list]!.forEach((item, i) => {
      if (used[list]![i]!) return
      used[list]![i] = true
      deal(arrow, list + 1, gr + item.gr, gives + item.givesGr, missGr, cost, low, high)
      used[list]![i] = false
    })
  }
  deal(0, 0, tray.besidesGr + arrows![0]!.gr, arrows![0]!.givesGr, 0, 0, Infinity, -Infinity)
  return best
}
