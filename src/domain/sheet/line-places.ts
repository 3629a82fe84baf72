/** Where each line of the plan lies on the arrow: from the rearmost of its pieces to the foremost, inches from the throat. */
import type { Id } from '../records/scalars'
import type { Geometry } from './geometry'

export interface LinePlace {
  readonly fromIn: number
  readonly toIn: number
}

/** A line that lies nowhere by itself, as glue does, is left out. */
export function linePlaces({ placed }: Geometry): ReadonlyMap<Id, LinePlace> {
  const places = new Map<Id, LinePlace>()
  for (const { line, fromIn, toIn } of placed) {
    const before = places.get(line.id) ?? { fromIn, toIn }
    places.set(line.id, { fromIn: Math.min(before.fromIn, fromIn), toIn: Math.max(before.toIn, toIn) })
  }
  return places
}
