/** Words of mending a light arrow. */
import { magnitude } from '../../core/quantity'
import type { Mass } from '../../core/quantity'
import type { PartChange } from '../../domain/bench/mend-options'
import { show } from './format'

export const changeWords = ({ was, now }: PartChange): string =>
  was === null ? `${now.name}, added` : `${now.name} in place of ${was.name}`

export const mendReason = (over: Mass): string => `light by ${show(magnitude(over), 'gr', 1)}: mended`

export const mendedWords = (no: number, change: PartChange): string =>
  `No. ${no}: ${changeWords(change)}. Go by the steps: what is to be weighed or trimmed again is open again.`

export const PAIRED_ALREADY = 'Nothing is gained by changing pieces: it is paired as well as it can be.'

export const pairedWords = (arrows: number): string =>
  `Paired: pieces of ${arrows} arrows have changed. Lay them with their new arrows now.`
