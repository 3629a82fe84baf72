/** Two lists, exactly: what each arrow already weighs, and the list that is still to be dealt out. */
import { cheapestAssignment } from './assignment'
import { type Minimise, missOf, type PairItem, type Tray, trimCost, type Worth } from './pairing'

export interface Begun {
  readonly weightGr: number
  readonly givesGr: number
}
export interface PairedTwo {
  /** By arrow: the index of its item. */
  readonly items: readonly number[]
  readonly worth: Worth
}

const MISS = 1e6 // a grain missed outweighs all that could be trimmed off a tray
const SAME_GR = 1e-9

/**
 * Trimming adds up over the arrows: one assignment. The spread does not: for each lightest weight there could be, the
 * least heaviest weight that still leaves an assignment is found by moving both ends up together.
 *
 * @param items at least as many as arrows
 */
export function pairTwo(
  tray: Tray,
  arrows: readonly Begun[],
  items: readonly PairItem[],
  minimise: Minimise,
): PairedTwo {
  const weights = arrows.map(({ weightGr }) => items.map(({ gr }) => weightGr + gr))
  const gives = (arrow: number, item: number) => arrows[arrow]!.givesGr + items[item]!.givesGr
  const misses = weights.map((row, arrow) => row.map((gr, item) => missOf(tray, gr, gives(arrow, item))))
  if (minimise === 'trimming') {
    const costs = misses.map((row, arrow) =>
      row.map((miss, item) => MISS * miss + trimCost(tray, weights[arrow]![item]!, gives(arrow, item))),
    )
    const { columns } = cheapestAssignment(costs)!
    const over = (of: (arrow: number, item: number) => number) => columns.reduce((sum, item, i) => sum + of(i, item), 0)
    const missGr = over((arrow, item) => misses[arrow]![item]!)
    return { items: columns, worth: { missGr, value: over((a, b) => trimCost(tray, weights[a]![b]!, gives(a, b))) } }
  }
  const least = cheapestAssignment(misses)!
  const sums = [...new Set(weights.flat())].toSorted((a, b) => a - b)
  const within = (low: number, high: number) => {
    const found = cheapestAssignment(
      misses.map((row, arrow) =>
        row.map((miss, item) => {
          const gr = weights[arrow]![item]!
          return gr >= low && gr <= high ? miss : Infinity
        }),
      ),
    )
    return found !== undefined && found.total <= least.total + SAME_GR ? found : undefined
  }
  let best = least.columns
  let spread = spreadOf(weights, best)
  let top = 0
  for (const low of sums) {
    while (top < sums.length) {
      if (sums[top]! - low >= spread) break
      const found = sums[top]! >= low ? within(low, sums[top]!) : undefined
      if (found !== undefined) {
        best = found.columns
        spread = spreadOf(weights, best)
        break
      }
      top += 1
    }
    if (top === sums.length) break
  }
  return { items: best, worth: { missGr: least.total, value: spread } }
}

function spreadOf(weights: readonly (readonly number[])[], items: readonly number[]): number {
  const chosen = items.map((item, arrow) => weights[arrow]![item]!)
  return Math.max(...chosen) - Math.min(...chosen)
}
