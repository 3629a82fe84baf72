/** How the glue of a set stands: nothing that is bonded is handed on before its time without a decision on the record. */
import type { Id } from '../records/scalars'
import type { Sheet } from '../sheet/sheet'
import type { Bench, Timer } from './bench'
import { gluesJoint, running } from './cure-timer'
import type { GluedJoint } from './cure-timer'
import { routeOf, stepDone } from './progress'

/** The step that glues a joint, and starts its time. */
export const GLUED_AT: Readonly<Record<string, GluedJoint>> = { fletch: 'vanes', bond: 'front' }
export const JOINT_WORD: Readonly<Record<GluedJoint, string>> = { vanes: 'vane glue', front: 'front glue' }

/** Steps that no glue may still be curing at. */
const ENDS_AT: ReadonlySet<string> = new Set(['cure', 'pack'])

export interface CureInTheWay {
  readonly running: readonly Timer[]
  /** Joints that were glued and whose time was never started: too cold, too hot, or nobody did. */
  readonly unstarted: readonly GluedJoint[]
}

/** @returns undefined when the step may be confirmed: it waits for no cure, or every cure is over */
export function cureInTheWay(step: string, bench: Bench, sheet: Sheet, now: string): CureInTheWay | undefined {
  if (!ENDS_AT.has(step)) return undefined
  const isCure = (timer: Timer) => GLUED_AT[timer.step] !== undefined
  const open = running(bench, now).filter(isCure)
  // Front first, the vanes are not on yet when the front has cured.
  const unstarted = routeOf(bench, sheet)
    .filter((each) => GLUED_AT[each.key] !== undefined && stepDone(each, bench, sheet))
    .map((each) => GLUED_AT[each.key]!)
    .filter((joint) => gluesJoint(sheet, joint) && !bench.timers.some((timer) => GLUED_AT[timer.step] === joint))
  const decided = bench.deviations.some((each) => ENDS_AT.has(each.step) && each.point === null)
  return open.length + unstarted.length === 0 || (decided && open.length === 0)
    ? undefined
    : { running: open, unstarted: decided ? [] : unstarted }
}

/** The cures of an arrow as they were; one that was set anew by the room counts as it ended up. */
export const curesOf = ({ timers }: Bench, arrow: Id): readonly Timer[] =>
  timers.filter(
    (timer, at) =>
      GLUED_AT[timer.step] !== undefined &&
      (timer.arrow === null || timer.arrow === arrow) &&
      !timers.slice(at + 1).some((later) => later.step === timer.step && later.startedAt === timer.startedAt),
  )
