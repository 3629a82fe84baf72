/**
 * The other order: the front is bonded and the bare shaft tuned before it is fletched. What is weighed on the way is then an
 * arrow without its vanes, and weighed fletched is the whole of it.
 */
import { remembered } from '../remembered'
import type { Sheet } from '../sheet/sheet'
import type { Bench } from './bench'
import type { Step } from './route'

export function isFletchedLast(route: readonly Pick<Step, 'key'>[]): boolean {
  const at = (key: string) => route.findIndex((step) => step.key === key)
  return at('fletch') > at('bond') && at('bond') >= 0
}

/** The sheet with the route that this set is on. */
export const onItsRoute = (sheet: Sheet, { route }: Pick<Bench, 'route'>): Sheet =>
  route === null ? sheet : withRoute(sheet, route)

const withRoute = remembered((sheet: Sheet, route: readonly Step[]): Sheet => ({ ...sheet, route: [...route] }))
