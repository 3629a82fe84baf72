/** What stands in each place of a sheet's arrow, as two sheets can be held beside one another. */
import { AXIS_NAMES, axisOf, type Axis } from '../search/axes'
import type { Sheet } from './sheet'

export interface PartInPlace {
  readonly name: string
  readonly count: number
  readonly lotCode: string | undefined
}

/** In the order of the places; a place with nothing in it is left out. */
export function partsInPlaces(sheet: Sheet): ReadonlyMap<Axis, readonly PartInPlace[]> {
  const placed = sheet.plan.lines.flatMap((line) => {
    const part = sheet.parts.find(({ id }) => id === line.part)?.part
    const axis = part && axisOf(part.kind)
    const lotCode = sheet.lots.find(({ id }) => id === line.lot)?.lot.code
    return part === undefined || axis === undefined ? [] : [{ axis, name: part.name, count: line.count, lotCode }]
  })
  return new Map(
    AXIS_NAMES.flatMap((axis) => {
      const own = placed.filter((each) => each.axis === axis)
      return own.length === 0 ? [] : [[axis, own] as const]
    }),
  )
}

/** What the parts of one arrow cost, whole cents. */
export const partsCents = (sheet: Sheet): number =>
  sheet.plan.lines.reduce((total, { part, count }) => {
    const record = sheet.parts.find(({ id }) => id === part)?.part
    return record === undefined || record.kind === 'glue' ? total : total + record.priceCents * count
  }, 0)
