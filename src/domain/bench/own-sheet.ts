/** The sheet that one arrow is really built to: the frozen one, with what was fitted to this arrow in place of its lines. */
import { geometryOf } from '../sheet/geometry'
import type { Geometry } from '../sheet/geometry'
import type { PlanLine } from '../sheet/plan'
import type { PlanItem } from '../sheet/plan-items'
import { planItems } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import type { BenchArrow } from './bench'
import type { Fitted } from './fitted'

type Built = Pick<BenchArrow, 'fitted'>

const asLine = ({ line, part, lot, no, count }: Fitted, planned?: PlanLine): PlanLine => ({
  id: line,
  part,
  lot,
  count: count ?? planned?.count ?? 1,
  ...(no === undefined ? {} : { no }),
})

const beside = <T extends { readonly id: string }>(held: readonly T[], more: readonly T[]): T[] => [
  ...held,
  ...more.filter(({ id }) => !held.some((each) => each.id === id)),
]

export function ownSheet({ fitted }: Built, sheet: Sheet): Sheet {
  if (fitted.length === 0) return sheet
  const { plan } = sheet
  const planned = plan.lines.map((line) => {
    const own = fitted.find((each) => each.line === line.id)
    return own === undefined ? line : asLine(own, line)
  })
  const added = fitted.filter((each) => !plan.lines.some((line) => line.id === each.line)).map((each) => asLine(each))
  const cut = fitted.find(({ c2cIn }) => c2cIn !== undefined)?.c2cIn ?? plan.c2cIn
  return {
    ...sheet,
    plan: { ...plan, ...(cut === undefined ? {} : { c2cIn: cut }), lines: [...planned, ...added] },
    parts: beside(
      sheet.parts,
      fitted.flatMap(({ part, copy }) => (copy === undefined ? [] : [{ id: part, part: copy.part }])),
    ),
    lots: beside(
      sheet.lots,
      fitted.flatMap(({ lot, copy }) => (lot === null || !copy?.lot ? [] : [{ id: lot, lot: copy.lot }])),
    ),
    learned: [...sheet.learned, ...fitted.flatMap(({ copy }) => copy?.learned ?? [])],
  }
}

/** @param trimmedMm how much has come off the rear of its post */
export function ownGeometry(own: Sheet, trimmedMm = 0): Geometry | undefined {
  const parts = new Map(own.parts.map(({ id, part }) => [id, part]))
  return geometryOf(own.plan, (id) => parts.get(id), trimmedMm)
}

/** @param items the plan's, which are the arrow's own while nothing else was fitted */
export function ownItems(arrow: Built, sheet: Sheet, items: readonly PlanItem[]): readonly PlanItem[] {
  if (arrow.fitted.length === 0) return items
  const own = ownSheet(arrow, sheet)
  const geometry = ownGeometry(own)
  return geometry === undefined ? items : planItems(own, geometry)
}
