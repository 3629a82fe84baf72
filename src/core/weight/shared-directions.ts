import type { SharedError } from './forecast-weight'

/** Two directions are one when their unit vectors agree to this. */
const SAME = 1e-9

/**
 * The causes that move several arrows, as few independent directions as will do: causes that move the arrows in the same
 * proportions act as one. Each direction lists, arrow by arrow, the standard deviation it gives it. Plain kilograms.
 */
export function sharedDirections(arrows: readonly (readonly SharedError[])[]): readonly (readonly number[])[] {
  const byKey = new Map<string, number[]>()
  arrows.forEach((causes, i) => {
    for (const { key, sd } of causes) {
      const column = byKey.get(key) ?? arrows.map(() => 0)
      column[i] = sd
      byKey.set(key, column)
    }
  })
  const directions: number[][] = []
  for (const column of byKey.values()) {
    const length = Math.hypot(...column)
    if (length === 0) continue
    const same = directions.find((direction) => {
      const other = Math.hypot(...direction)
      return direction.every((sd, i) => Math.abs(sd / other - column[i]! / length) < SAME)
    })
    if (same) column.forEach((sd, i) => (same[i] = Math.hypot(same[i]!, sd)))
    else directions.push(column)
  }
  return directions
}
