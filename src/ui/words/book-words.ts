/** Words of the book and of the reorder. */
import type { Rebuilt } from '../../domain/book/rebuild-today'
import type { Survivors } from '../../domain/book/survivors'
import type { Compared } from '../../domain/book/then-and-now'
import { isInside } from '../../domain/book/then-and-now'
import type { Replacement } from '../../domain/book/rebuild'
import { counted, showNumber } from './format'
import { partKindWord } from './part-kind-words'

export function replacementWords({ was, now, named }: Replacement): string {
  if (now === undefined)
    return `${was.name} is not on it any more, and nothing stands in its place: look at the ${partKindWord(was.kind).toLowerCase()} before it is built.`
  const why = named
    ? 'which the shop has named to stand in'
    : 'of what is on the shelf the nearest on weight, FOC and reserve'
  return `${was.name} gives way to ${now.name}, ${why}.`
}

/** *Long post 125 for Long post 158* */
export const insteadWords = (replaced: readonly Replacement[]): string =>
  replaced.length === 0
    ? 'the same parts'
    : replaced.map(({ was, now }) => `${now?.name ?? 'nothing'} for ${was.name}`).join(', ')

/** In one sentence: whether it comes out the same, and what had to be given up for it. */
export function gaveUpWords({ matches, gaveUp, replaced }: Rebuilt): string {
  if (!matches) return 'Nothing on the shelf lands on all three: finished weight, FOC and reserve. This is the nearest.'
  const same = 'It lands on the same finished weight, FOC and reserve'
  switch (gaveUp) {
    case 'nothing':
    case 'parts gone':
      if (replaced.length === 0) return `${same}, with the same parts and the same cut.`
      return `${same} at the same cut; only what is gone was replaced.`
    case 'the cut':
      return `${same}, cut to another length.`
    case 'small parts':
      return `${same} with the same shaft, insert and head; smaller parts were changed.`
    case 'the insert':
      return `${same} with the same shaft and head, on another insert.`
    case 'the shaft':
      return `${same} with the same head, on another shaft.`
  }
}

const NAMES: Record<Compared['what'], string> = {
  finished: 'Finished weight, gr',
  foc: 'FOC, %',
  balance: 'Balance point, in',
  reserve: 'Column reserve',
  speed: 'Speed, ft/s',
  C2C: 'C2C, in',
  shaft: 'Cut shaft, gr',
  'to trim': 'To trim, gr',
}
export const comparedWord = (what: Compared['what']): string => NAMES[what]

export function insideWords(compared: Compared): string {
  const inside = isInside(compared)
  if (inside === undefined) return compared.past === undefined || compared.now === undefined ? 'cannot be compared' : ''
  return inside ? 'matches' : 'outside: cannot be matched with these parts'
}

/** Which arrows are further off than planned: *no. 2, 3 outside*. */
export const outsideWords = (nos: readonly number[]): string =>
  nos.length === 0 ? '' : `no. ${nos.join(', ')} outside`

export function survivorsWords({ inUse, gone, weighed: again, meanNowGr }: Survivors): string {
  const weighed =
    meanNowGr === undefined
      ? 'None was weighed again. Ask the client for the weights and enter them in Send, under Afterwards; or take the weights as built.'
      : `${again === inUse ? 'Weighed again, they' : `The ${again} weighed again`} come to ${showNumber(meanNowGr, 1)} gr.`
  if (inUse === 0) return `None in use: ${counted(gone, 'arrow')} retired.`
  const left =
    gone === 0
      ? `${counted(inUse, 'arrow')} in use, none retired.`
      : `${counted(inUse, 'arrow')} in use, ${gone} retired.`
  return `${left} ${weighed}`
}
export const weighAsWords = (gr: number): string => `Match the survivors, ${showNumber(gr, 1)} gr`
export const makeUpWords = (gone: number): string => `Build ${gone}, to make the set whole`
export const builtWords = (gr: number | undefined): string =>
  gr === undefined ? 'none was weighed as built' : `as built ${showNumber(gr, 1)} gr`

/** How many of how many stand in the list. */
export function listedWords(shown: number, of: number, asked: string): string {
  const jobs = counted(of, 'job')
  if (shown < of) return `${showNumber(shown, 0)} of ${jobs}${asked === '' ? '' : ' found'}`
  return asked === '' ? jobs : `${jobs} found`
}

/** A tag that was misread, or of another set. */
export const noSuchArrowWords = (job: string, no: number): string =>
  `Job ${job} has no arrow ${no}. Read the tag once more.`
