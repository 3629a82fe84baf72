/** What the Shop page says of a place's rule. */
import type { Rules } from '../../domain/shop/rules'
import { showPlain } from './format'

type Row = Rules['places'][number]

export function placeFigures(row: Row): string {
  const asked: readonly (readonly [number | undefined, string])[] = [
    [row.leastDrawWeightLb, 'lb draw weight'],
    [row.leastArrowGr, 'gr arrow'],
    [row.leastArrowPerLbGr, 'gr/lb'],
    [row.leastArrowLengthIn, 'in arrow length'],
    [row.leastHeadWidthIn, 'in broadhead'],
  ]
  const told = asked.flatMap(([least, what]) => (least === undefined ? [] : [`${showPlain(least, 3)} ${what}`]))
  return [...told, ...(row.note === undefined || row.note === '' ? [] : [row.note])].join('; ')
}
