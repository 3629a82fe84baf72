/** Which readings a step asks for on this sheet: none of a part that the arrow does not have. */
import type { PartKind } from '../stock/part'
import type { Sheet } from '../sheet/sheet'
import type { DataPoint } from './data-points'
import { kindsAt } from './data-points'
import type { Step } from './route'

/** Points that say nothing of an arrow without a head. */
const LESS_HEAD: readonly DataPoint[] = ['dryLessHead', 'weightLessHead']

export const hasKind = (sheet: Sheet, kinds: readonly PartKind[]): boolean =>
  sheet.plan.lines.some((line) => sheet.parts.some(({ id, part }) => id === line.part && kinds.includes(part.kind)))

const asked = (sheet: Sheet, point: DataPoint) => {
  const kinds = kindsAt(LESS_HEAD.includes(point) ? 'headWeight' : point)
  return kinds === undefined || hasKind(sheet, kinds)
}

export const pointsOf = (step: Step, sheet: Sheet): readonly DataPoint[] =>
  step.points.filter((point) => asked(sheet, point))

/** The readings without which the step is not done. */
export const requiredPoints = (step: Step, sheet: Sheet): readonly DataPoint[] =>
  pointsOf(step, sheet).filter((point) => !step.optional.includes(point))
