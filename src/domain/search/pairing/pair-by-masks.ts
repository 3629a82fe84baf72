/**
 * The least trimming of a small tray, exactly: arrow by arrow, over which items of each list are already dealt out
 * (Held and Karp's way of not looking at orders that come to the same, from memory).
 */
import { missOf, type Tray, trimCost } from './pairing'

const MISS = 1e6 // a grain missed outweighs all that could be trimmed off a tray
const MOST_STEPS = 2_000_000

interface State {
  readonly cost: number
  readonly before: number
  readonly taken: readonly number[]
}

/** @returns undefined when the tray is too large for it */
export function pairByMasks(tray: Tray): readonly (readonly number[])[] | undefined {
  const [arrows, ...lists] = tray.lists
  if (
    stepsOf(
      arrows!.length,
      lists.map((list) => list.length),
    ) > MOST_STEPS
  )
    return undefined
  const offsets = lists.map((_, i) => lists.slice(0, i).reduce((bits, list) => bits + list.length, 0))
  const layers: Map<number, State>[] = [new Map([[0, { cost: 0, before: 0, taken: [] }]])]
  for (const arrow of arrows!) {
    const next = new Map<number, State>()
    for (const [dealt, { cost }] of layers.at(-1)!) {
      const taken = Array.from({ length: lists.length }, () => 0)
      const deal = (list: number, mask: number, weightGr: number, givesGr: number) => {
        if (list === lists.length) {
          const spent = cost + MISS * missOf(tray, weightGr, givesGr) + trimCost(tray, weightGr, givesGr)
          const known = next.get(mask)
          if (known === undefined || spent < known.cost)
            next.set(mask, { cost: spent, before: dealt, taken: [...taken] })
          return
        }
        lists[list]!.forEach(({ gr, givesGr: gives }, i) => {
          const bit = 2 ** (offsets[list]! + i)
          if (Math.floor(dealt / bit) % 2 === 1) return
          taken[list] = i
          deal(list + 1, mask + bit, weightGr + gr, givesGr + gives)
        })
      }
      deal(0, dealt, tray.besidesGr + arrow.gr, arrow.givesGr)
    }
    layers.push(next)
  }
  let [mask, state] = [...layers.at(-1)!].reduce((best, each) => (each[1].cost < best[1].cost ? each : best))
  const choice = lists.map(() => Array.from({ length: arrows!.length }, () => 0))
  for (let arrow = arrows!.length - 1; arrow >= 0; arrow--) {
    state = layers[arrow + 1]!.get(mask)!
    state.taken.forEach((item, list) => {
      choice[list]![arrow] = item
    })
    mask = state.before
  }
  return choice
}

/** States times the deals out of each. */
function stepsOf(arrows: number, sizes: readonly number[]): number {
  let steps = 0
  for (let dealt = 0; dealt < arrows; dealt++) {
    steps += sizes.reduce((product, size) => product * choose(size, dealt) * (size - dealt), 1)
  }
  return steps
}

function choose(n: number, k: number): number {
  let ways = 1
  for (let i = 0; i < k; i++) ways = (ways * (n - i)) / (i + 1)
  return ways
}
