/** How high each dot stands so that dots that would touch stand on one another, in the order they come. */
export function stacked(positions: readonly number[], apart: number): readonly number[] {
  const levels: number[] = []
  positions.forEach((x, at) => {
    let level = 0
    while (positions.slice(0, at).some((other, i) => levels[i] === level && Math.abs(other - x) < apart)) level += 1
    levels.push(level)
  })
  return levels
}
