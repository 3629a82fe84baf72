/** Words of *Find parts*. */
import type { Limit } from '../../domain/search/asking'
import type { FoundArrow } from '../../domain/search/found-arrow'
import type { SearchEnd } from '../../domain/search/searcher'
import { counted, showNumber } from './format'

const LIMIT: Readonly<Record<Limit, string>> = {
  FOC: 'FOC',
  reserve: 'Column reserve',
  clearance: 'Clearance at full draw',
  chance: 'Chance to reach the target',
}
export const limitWord = (limit: Limit): string => LIMIT[limit]

const PERCENT = 100
export const progressWords = (done: number, visited: number): string =>
  `Searching: ${showNumber(done * PERCENT, 0)} % of the shafts and cuts, ${counted(visited, 'combination')} looked at.`

export function endWords(end: SearchEnd): string {
  switch (end.kind) {
    case 'found': {
      const { found, misses, counts } = end.answer
      if (found.length > 0) {
        return `${counted(found.length, 'arrow')} found among ${counted(counts.combinations, 'combination')}, the best first.`
      }
      return misses.length > 0
        ? 'Nothing keeps every wish. The nearest are below, each with what it breaks.'
        : 'Nothing found.'
    }
    case 'stopped':
      return 'Stopped. What it had found is dropped.'
    case 'replaced':
      return 'A newer search took its place.'
    case 'failed':
      return `The search could not be finished: ${end.detail}. Nothing was changed; try again.`
  }
}

/** What one of the arrows gives up against the best of those beside it. */
export function givesUpWords(own: FoundArrow, all: readonly FoundArrow[]): string {
  const best = (of: (arrow: FoundArrow) => number) => Math.max(...all.map(of))
  const is = {
    chance: own.figures.chance < best(({ figures }) => figures.chance) - NOTICED.chance,
    price: -own.figures.priceCents < best(({ figures }) => -figures.priceCents),
    stock: own.figures.spare < best(({ figures }) => figures.spare),
    FOC: own.figures.focPercent < best(({ figures }) => figures.focPercent) - NOTICED.foc,
  }
  const told = [
    ...(is.chance ? ['a lower chance to reach the target'] : []),
    ...(is.FOC ? ['less FOC'] : []),
    ...(is.price ? ['dearer parts'] : []),
    ...(is.stock ? ['less left on the shelf'] : []),
  ]
  return told.length === 0 ? 'nothing against the others' : told.join(', ')
}
const NOTICED = { chance: 0.005, foc: 0.05 } // half of what is shown

export const spareWords = (spare: number): string =>
  spare === 0 ? 'the last of it' : `${counted(spare, 'more arrow')}`

export const RANKED =
  'Ranked by how far each arrow is from what was wished, in steps of each wish’s tolerance; then by what it leaves on the shelf; then by price.'

export const leftOutWords = (n: number): string => `${counted(n, 'part')} left out, or not in every length`
