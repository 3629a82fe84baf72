/**
 * Where the work stands: which step is done for which arrow, and what comes next. Derived from the readings and
 * confirmations alone, so that after any reload it is the same.
 */
import type { Sheet } from '../sheet/sheet'
import type { Bench, BenchArrow } from './bench'
import { accepted, building } from './bench'
import type { DataPoint } from './data-points'
import { ownSheet } from './own-sheet'
import { requiredPoints } from './points-of'
import type { Step } from './route'

/** `arrow` is null where the whole set is confirmed at once; `point` is null where only a confirmation is left. */
export interface NextThing {
  readonly step: Step
  readonly arrow: BenchArrow | null
  readonly point: DataPoint | null
}

export const routeOf = (bench: Bench, sheet: Sheet): readonly Step[] => bench.route ?? sheet.route

/** A tray of one kind of part is weighed through before the next kind is taken up. */
const BY_POINT: ReadonlySet<string> = new Set(['weigh parts'])

export function arrowDone(step: Step, arrow: BenchArrow, sheet: Sheet): boolean {
  const read = requiredPoints(step, ownSheet(arrow, sheet)).every((point) => accepted(arrow, point) !== undefined)
  return read && (step.confirm !== 'arrow' || arrow.confirmed.some((each) => each.step === step.key))
}

export function stepDone(step: Step, bench: Bench, sheet: Sheet): boolean {
  const set = step.confirm !== 'set' || bench.confirmed.some((each) => each.step === step.key)
  return set && building(bench).every((arrow) => arrowDone(step, arrow, sheet))
}

/** What is left to do of one step, in the order it is best done. */
export function leftOf(step: Step, bench: Bench, sheet: Sheet): readonly NextThing[] {
  const arrows = building(bench)
  const unread = (arrow: BenchArrow) =>
    requiredPoints(step, ownSheet(arrow, sheet))
      .filter((point) => accepted(arrow, point) === undefined)
      .map((point): NextThing => ({ step, arrow, point }))
  const readings = BY_POINT.has(step.key)
    ? step.points.flatMap((point) => arrows.flatMap((a) => unread(a).filter((t) => t.point === point)))
    : arrows.flatMap((arrow) => [
        ...unread(arrow),
        ...(step.confirm === 'arrow' && !arrow.confirmed.some((each) => each.step === step.key)
          ? [{ step, arrow, point: null }]
          : []),
      ])
  const confirm = step.confirm === 'set' && !bench.confirmed.some((each) => each.step === step.key)
  return confirm ? [...readings, { step, arrow: null, point: null }] : readings
}

/** The next thing to do on the whole route, or null when the route is walked to its end. */
export function nextThing(bench: Bench, sheet: Sheet): NextThing | null {
  for (const step of routeOf(bench, sheet)) {
    const [first] = leftOf(step, bench, sheet)
    if (first !== undefined) return first
  }
  return null
}
