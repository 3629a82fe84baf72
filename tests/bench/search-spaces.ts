/** Invented shelves whose combinations grow tenfold from one to the next, with every constraint on. */
import type { SearchProblem } from '@/domain/search/wishes'
import { dice, problemOf, shelf, type ShelfSize } from '@tests/domain/search/shelf-of-stock'

/** Sizes as [shafts, cut lengths, inserts, collars or none, heads, nocks, vane sets, wraps or none]. */
export const SPACES: Readonly<
  Record<string, readonly [number, number, number, number, number, number, number, number]>
> = {
  '10⁴': [2, 5, 4, 2, 8, 2, 4, 2],
  '10⁵': [3, 7, 6, 4, 10, 2, 5, 2],
  '10⁶': [4, 9, 8, 4, 12, 4, 6, 3],
  '10⁷': [6, 13, 12, 6, 16, 4, 7, 4],
  '2·10⁸': [12, 17, 20, 8, 25, 6, 10, 4],
  '10⁹': [16, 21, 24, 10, 32, 8, 12, 4],
}

export function searchSpace(name: string, seed = 1): SearchProblem {
  const [shafts, lengths, inserts, rings, heads, nocks, vanes, wraps] = SPACES[name]!
  const size: ShelfSize = { shafts, inserts, collars: rings - 1, heads, nocks, vanes, wraps: wraps - 1 }
  return problemOf(shelf(dice(seed), size), {
    c2cIn: { min: 27, max: 31, step: 4 / (lengths - 1) },
    foc: { min: 20, max: 30, aim: 25, tolerance: 0.5 },
    reserve: { min: 0.75, max: 1.3, aim: 1, tolerance: 0.05 },
  })
}
