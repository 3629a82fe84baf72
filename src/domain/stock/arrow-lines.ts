/** The lines that one arrow is really built of: the plan's, with what was fitted to it in their place or beside them. */
import type { BenchArrow } from '../bench/bench'
import type { Id } from '../records/scalars'
import type { Sheet } from '../sheet/sheet'
import type { Part, PartKind, PartOf } from './part'

export interface ArrowLine<P extends Part = Part> {
  readonly part: P
  readonly id: Id
  readonly lot: Id | null
  readonly count: number
}

/** @param arrow left out for an arrow that is not begun: the plan's own lines */
export function arrowLines(sheet: Sheet, arrow?: Pick<BenchArrow, 'fitted'>): readonly ArrowLine[] {
  const fitted = arrow?.fitted ?? []
  const planned = sheet.plan.lines.map((line) => ({ ...line, ...fitted.find((each) => each.line === line.id) }))
  const beside = fitted.filter((each) => !sheet.plan.lines.some((line) => line.id === each.line))
  const copies = fitted.flatMap(({ part, copy }) => (copy === undefined ? [] : [{ id: part, part: copy.part }]))
  const parts = new Map([...copies, ...sheet.parts].map(({ id, part }) => [id, part]))
  return [...planned, ...beside].flatMap((line): readonly ArrowLine[] => {
    const part = parts.get(line.part)
    return part === undefined ? [] : [{ part, id: line.part, lot: line.lot, count: line.count ?? 1 }]
  })
}

export const linesOfKind = <K extends PartKind>(lines: readonly ArrowLine[], kinds: readonly K[]) =>
  lines.filter((line): line is ArrowLine<PartOf<K>> => (kinds as readonly PartKind[]).includes(line.part.kind))
