/** Changes to the bench route: a step moved, switched off or on, one of the shop's own added, the other order taken. */
import { DEFAULT_ROUTE } from '../bench/route'
import type { Step } from '../bench/route'

export type Route = readonly Step[]

export function moved(route: Route, key: string, by: -1 | 1): Route {
  const at = route.findIndex((step) => step.key === key)
  const to = at + by
  if (at < 0 || to < 0 || to >= route.length) return route
  const next = [...route]
  ;[next[at], next[to]] = [next[to]!, next[at]!]
  return next
}

export const without = (route: Route, key: string): Route => route.filter((step) => step.key !== key)

/** Steps of the usual route that are switched off. */
export const switchedOff = (route: Route): Route =>
  DEFAULT_ROUTE.filter(({ key }) => !route.some((step) => step.key === key))

/** Back where it usually stands: after the nearest usual step before it that is still on. */
export function withUsual(route: Route, key: string): Route {
  const usual = DEFAULT_ROUTE.findIndex((step) => step.key === key)
  if (usual < 0 || route.some((step) => step.key === key)) return route
  const before = DEFAULT_ROUTE.slice(0, usual)
    .map((step) => route.findIndex((each) => each.key === step.key))
    .reduce((last, at) => Math.max(last, at), -1)
  return [...route.slice(0, before + 1), DEFAULT_ROUTE[usual]!, ...route.slice(before + 1)]
}

/** The shop's own step goes in before packing, or last. @returns the same route when it has such a step already */
export function withOwn(route: Route, name: string, confirm: 'arrow' | 'set', instruction: string): Route {
  const key = `own:${name.trim().slice(0, 40)}`
  if (name.trim() === '' || route.some((step) => step.key === key)) return route
  const own: Step = {
    key,
    points: [],
    optional: [],
    confirm,
    hold: false,
    ...(instruction.trim() === '' ? {} : { instruction: instruction.trim() }),
  }
  const pack = route.findIndex((step) => step.key === 'pack')
  const at = pack < 0 ? route.length : pack
  return [...route.slice(0, at), own, ...route.slice(at)]
}

/** What the weighings on the way are of, in that order. */
const FRONT_FIRST: Readonly<Record<string, string>> = {
  'dry fit': 'Everything but vanes and wrap assembled without glue, head on. Weigh it.',
  'weigh fletched': 'The whole arrow, head and nock on. What is over the parts is the vane glue.',
}

/** Front bonded first, bare shaft and nock tuned, then fletched: common practice, no source [CP]. */
export function frontFirst(route: Route): Route {
  const later = new Set(['fletch', 'weigh fletched'])
  const fletching = route.filter((step) => later.has(step.key))
  const rest = route.filter((step) => !later.has(step.key))
  const cure = rest.findIndex((step) => step.key === 'cure')
  const at = cure < 0 ? rest.length : cure + 1
  return [...rest.slice(0, at), ...fletching, ...rest.slice(at)].map((step) => {
    const instruction = FRONT_FIRST[step.key]
    return instruction === undefined ? step : { ...step, instruction }
  })
}
