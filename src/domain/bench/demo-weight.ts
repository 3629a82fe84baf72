/** What the demo scale is given to weigh, in the demo shop only: near what is expected, another for each arrow. Invented. */
import type { Sheet } from '../sheet/sheet'
import type { BenchArrow } from './bench'
import { standing } from './bench'
import type { DataPoint } from './data-points'
import type { Expectation } from './slips'

const SPREAD = 0.1 // of the half width of the band: no two alike, all of them likely

export function demoWeightGr(
  point: DataPoint,
  arrow: BenchArrow,
  { value, half, closure }: Expectation,
  sheet: Sheet,
): number {
  if (point === 'trimWeight') return value - sheet.rules.passes.usualGr
  if (point === 'edgeWeight') return value - sheet.rules.passes.lightGr / 2
  const turn = ((arrow.no * 7 + standing(arrow, point).length) % 11) - 5
  return value + turn * Math.min(SPREAD * half, closure ? 0 : 0.5)
}
