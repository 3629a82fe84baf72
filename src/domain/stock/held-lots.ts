/** The lots that a sheet or an arrow takes parts from and that were put on hold since. */
import type { BenchArrow } from '../bench/bench'
import type { Sheet } from '../sheet/sheet'
import { arrowLines } from './arrow-lines'
import type { Shelf } from './shelf'

export interface HeldLot {
  readonly code: string
  readonly part: string
  readonly why: string
}

/** @param arrows those still being built; none for the plan alone */
export function heldLots(
  sheet: Sheet,
  arrows: readonly Pick<BenchArrow, 'fitted'>[],
  shelf: Shelf,
): readonly HeldLot[] {
  const lines = arrows.length === 0 ? arrowLines(sheet) : arrows.flatMap((arrow) => arrowLines(sheet, arrow))
  const names = new Map(lines.flatMap(({ lot, part }) => (lot === null ? [] : [[lot, part.name] as const])))
  return [...names].flatMap(([id, part]): readonly HeldLot[] => {
    const lot = shelf.lots.get(id)?.body
    return lot?.hold === undefined ? [] : [{ code: lot.code, part, why: lot.hold }]
  })
}
