/** Hold points: a step that the whole set is through before anything after it is confirmed. */
import type { Sheet } from '../sheet/sheet'
import type { Bench } from './bench'
import { routeOf, stepDone } from './progress'
import type { Step } from './route'

/** The first hold before a step that the set is not through; undefined when the way is free. */
export function holdBefore(step: Step, bench: Bench, sheet: Sheet): Step | undefined {
  const route = routeOf(bench, sheet)
  const at = route.findIndex(({ key }) => key === step.key)
  return route.slice(0, Math.max(0, at)).find((each) => each.hold && !stepDone(each, bench, sheet))
}
