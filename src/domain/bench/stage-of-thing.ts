/** Step and arrow of an address, and the address of a step and an arrow. */
import type { Sheet } from '../sheet/sheet'
import type { Bench } from './bench'
import { accepted, building } from './bench'
import { ownSheet } from './own-sheet'
import { pointsOf } from './points-of'
import { leftOf, nextThing, routeOf } from './progress'
import type { NextThing } from './progress'
import type { Step } from './route'

export const slugOf = (key: string) => key.replaceAll(' ', '-').replaceAll(':', '_')

export const stepOfSlug = (route: readonly Step[], slug: string | undefined): Step | undefined =>
  route.find((step) => slugOf(step.key) === slug)

/** What an address asks for: the step's first open thing for that arrow, or a look back at what was read there. */
export function thingAt(bench: Bench, sheet: Sheet, slug?: string, no?: string): NextThing | null {
  const step = stepOfSlug(routeOf(bench, sheet), slug)
  if (step === undefined) return nextThing(bench, sheet)
  const left = leftOf(step, bench, sheet)
  const arrow = building(bench).find((each) => String(each.no) === no)
  if (arrow === undefined) return left[0] ?? { step, arrow: building(bench)[0] ?? null, point: null }
  const own = left.find((thing) => thing.arrow?.id === arrow.id)
  if (own !== undefined) return own
  const points = pointsOf(step, ownSheet(arrow, sheet))
  return { step, arrow, point: points.findLast((point) => accepted(arrow, point) !== undefined) ?? points[0] ?? null }
}
