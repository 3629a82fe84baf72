/**
 * The cheapest way to give every row a column of its own, exactly: shortest augmenting paths with potentials, the method
 * of Kuhn and Munkres as Jonker and Volgenant run it (from memory), n²·m steps for n rows and m columns.
 */
export interface Assignment {
  /** By row: its column. */
  readonly columns: readonly number[]
  readonly total: number
}

/**
 * @param costs n rows of m ≥ n finite numbers; Infinity for a pair that may not be
 * @returns undefined when some row can have no column
 */
export function cheapestAssignment(costs: readonly (readonly number[])[]): Assignment | undefined {
  const rows = costs.length
  const columns = costs[0]?.length ?? 0
  if (rows > columns) return undefined
  // Index 0 is the place before the first; row and column i stand at i + 1.
  const rowPotential = new Float64Array(rows + 1)
  const columnPotential = new Float64Array(columns + 1)
  const rowOf = new Int32Array(columns + 1)
  const cameFrom = new Int32Array(columns + 1)
  for (let row = 1; row <= rows; row++) {
    rowOf[0] = row
    let at = 0
    const distance = new Float64Array(columns + 1).fill(Infinity)
    const isDone = new Uint8Array(columns + 1)
    do {
      isDone[at] = 1
      const from = rowOf[at]!
      let nearest = Infinity
      let next = 0
      for (let column = 1; column <= columns; column++) {
        if (isDone[column] === 1) continue
        const reduced = costs[from - 1]![column - 1]! - rowPotential[from]! - columnPotential[column]!
        if (reduced < distance[column]!) {
          distance[column] = reduced
          cameFrom[column] = at
        }
        if (distance[column]! < nearest) {
          nearest = distance[column]!
          next = column
        }
      }
      if (nearest === Infinity) return undefined
      for (let column = 0; column <= columns; column++) {
        if (isDone[column] === 1) {
          rowPotential[rowOf[column]!]! += nearest
          columnPotential[column]! -= nearest
        } else distance[column]! -= nearest
      }
      at = next
    } while (rowOf[at] !== 0)
    while (at !== 0) {
      const before = cameFrom[at]!
      rowOf[at] = rowOf[before]!
      at = before
    }
  }
  const chosen = Array.from({ length: rows }, () => 0)
  for (let column = 1; column <= columns; column++) if (rowOf[column]! > 0) chosen[rowOf[column]! - 1] = column - 1
  return { columns: chosen, total: chosen.reduce((sum, column, row) => sum + costs[row]![column]!, 0) }
}
