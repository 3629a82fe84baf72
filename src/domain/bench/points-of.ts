/** Which readings a step asks for on this sheet: none of a part that the arrow does not have. */
import type { PartKind } from '../stock/part'
import type { Sheet } from '../sheet/sheet'
import type { DataPoint } from './data-points'
import type { Step } from './route'

const NEEDS: Readonly<Partial<Record<DataPoint, readonly PartKind[]>>> = {
  insertWeight: ['insert', 'half-out', 'outsert', 'rear weight'],
  collarWeight: ['collar', 'sleeve', 'footing'],
  headWeight: ['broadhead', 'field point'],
  nockWeight: ['nock', 'bushing'],
  vanesWeight: ['vane', 'feather'],
  wrapWeight: ['wrap'],
  dryLessHead: ['broadhead', 'field point'],
  weightLessHead: ['broadhead', 'field point'],
}

export const hasKind = (sheet: Sheet, kinds: readonly PartKind[]): boolean =>
  sheet.plan.lines.some((line) => sheet.parts.some(({ id, part }) => id === line.part && kinds.includes(part.kind)))

const asked = (sheet: Sheet, point: DataPoint) => {
  const kinds = NEEDS[point]
  return kinds === undefined || hasKind(sheet, kinds)
}

export const pointsOf = (step: Step, sheet: Sheet): readonly DataPoint[] =>
  step.points.filter((point) => asked(sheet, point))

/** The readings without which the step is not done. */
export const requiredPoints = (step: Step, sheet: Sheet): readonly DataPoint[] =>
  pointsOf(step, sheet).filter((point) => !step.optional.includes(point))
