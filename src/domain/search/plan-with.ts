/** The plan with an arrow that was found: its parts in place of those on the same axes, its cut length; the rest stays. */
import type { Id } from '../records/scalars'
import type { Plan, PlanLine } from '../sheet/plan'
import type { Part } from '../stock/part'
import { AXIS_NAMES, axisOf } from './axes'
import type { FoundArrow } from './found-arrow'

export interface PlanChange {
  readonly c2cIn: number
  readonly set: readonly PlanLine[]
  readonly removed: readonly Id[]
}

/**
 * What has to be changed in a plan for it to be the arrow found. A line that already stands for an axis is kept and takes
 * the part; further lines of that axis go.
 *
 * @param partOf the part that a line of the plan names
 * @param newId of each line that is added
 */
export function planChange(
  plan: Plan,
  partOf: (id: Id) => Part | undefined,
  { parts, figures }: FoundArrow,
  newId: () => Id,
): PlanChange {
  const set: PlanLine[] = []
  const removed: Id[] = []
  for (const axis of AXIS_NAMES) {
    const [first, ...others] = plan.lines.filter(({ part }) => {
      const record = partOf(part)
      return record !== undefined && axisOf(record.kind) === axis
    })
    removed.push(...others.map(({ id }) => id))
    const chosen = parts[axis]
    if (chosen !== undefined) set.push({ id: first?.id ?? newId(), ...chosen })
    else if (first !== undefined) removed.push(first.id)
  }
  return { c2cIn: figures.c2cIn, set, removed }
}

export function planWith(plan: Plan, { c2cIn, set, removed }: PlanChange): Plan {
  const changed = new Map(set.map((line) => [line.id, line]))
  const kept = plan.lines.filter(({ id }) => !removed.includes(id)).map((line) => changed.get(line.id) ?? line)
  const added = set.filter(({ id }) => !plan.lines.some((line) => line.id === id))
  return { ...plan, c2cIn, lines: [...kept, ...added] }
}
