/** The fewest points of which each speaks for a stretch about itself, so that together they speak for a whole window. */

export interface Window {
  readonly min: number
  readonly max: number
}
export interface Covering {
  /** Places in the list that was given, by rising value. */
  readonly chosen: readonly number[]
  /** Stretches of the window that no point of the list speaks for. */
  readonly open: readonly Window[]
}

/**
 * A point p speaks for p/reach to p·reach. From the window's low end, the furthest point that still speaks for the edge is
 * always right: any other covering can have its first point moved there without losing anything, so none has fewer.
 *
 * @param points above 0
 * @param reach above 1
 */
export function fewestCovering(points: readonly number[], { min, max }: Window, reach: number): Covering {
  const order = points.map((_, at) => at).toSorted((a, b) => points[a]! - points[b]!)
  const chosen: number[] = []
  const open: Window[] = []
  let edge = min
  while (edge < max) {
    const speaking = order.filter((at) => points[at]! / reach <= edge && points[at]! * reach > edge)
    const furthest = speaking.at(-1)
    if (furthest !== undefined) {
      chosen.push(furthest)
      edge = points[furthest]! * reach
      continue
    }
    const next = order.find((at) => points[at]! / reach > edge)
    const to = next === undefined ? max : Math.min(max, points[next]! / reach)
    open.push({ min: edge, max: to })
    edge = to
  }
  return { chosen, open }
}
