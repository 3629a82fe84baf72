export interface LeastSquares {
  readonly coefficients: readonly number[]
  /** (XᵀX)⁻¹; times the residual variance it is the covariance of the coefficients. */
  readonly inverseNormal: readonly (readonly number[])[]
  readonly residuals: readonly number[]
  readonly residualSumOfSquares: number
}

const RANK_TOLERANCE = 1e-14

/**
 * Linear least squares, y ≈ X·b, by Householder reflections on columns scaled to length one. Plain numbers.
 *
 * @param rows the design matrix, one row an observation
 * @throws RangeError when the shapes disagree, there are fewer rows than columns, or the columns depend on each other
 *
 * Source: [GVL] algorithm 5.3.2.
 */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  const n = rows.length
  const p = rows[0]?.length ?? 0
  if (p === 0 || n < p || y.length !== n || rows.some((row) => row.length !== p))
    throw new RangeError(`cannot fit ${p} coefficients to ${n} rows and ${y.length} values`)
  const scale = Array.from({ length: p }, (_, j) => Math.hypot(...rows.map((row) => row[j]!)))
  const a = rows.map((row) => row.map((x, j) => x / scale[j]!))
  const right = [...y]
  const diagonal: number[] = []
  for (let j = 0; j < p; j++) {
    const norm = Math.hypot(...a.slice(j).map((row) => row[j]!))
    if (!(norm > RANK_TOLERANCE)) throw new RangeError('the columns depend on each other')
    const alpha = a[j]![j]! > 0 ? -norm : norm
    diagonal.push(alpha)
    a[j]![j]! -= alpha
    const half = -alpha * a[j]![j]! // vᵀv/2
    for (let k = j + 1; k < p; k++) {
      let dot = 0
      for (let i = j; i < n; i++) dot += a[i]![j]! * a[i]![k]!
      for (let i = j; i < n; i++) a[i]![k]! -= (dot / half) * a[i]![j]!
    }
    let dot = 0
    for (let i = j; i < n; i++) dot += a[i]![j]! * right[i]!
    for (let i = j; i < n; i++) right[i]! -= (dot / half) * a[i]![j]!
  }
  const solve = (b: readonly number[]) => backSubstituted(a, diagonal, b)
  const coefficients = solve(right).map((x, j) => x / scale[j]!)
  const inverse = Array.from({ length: p }, (_, j) => solve(Array.from({ length: p }, (_, i) => (i === j ? 1 : 0)))) // columns of R⁻¹
  const inverseNormal = scale.map((si, i) =>
    scale.map((sj, j) => inverse.reduce((total, column) => total + column[i]! * column[j]!, 0) / (si * sj)),
  )
  const residuals = rows.map((row, i) => y[i]! - row.reduce((total, x, j) => total + x * coefficients[j]!, 0))
  return { coefficients, inverseNormal, residuals, residualSumOfSquares: residuals.reduce((s, r) => s + r * r, 0) }
}

/** Solves R·x = b, with R above the diagonal of `a` and its diagonal apart. */
function backSubstituted(a: readonly (readonly number[])[], diagonal: readonly number[], b: readonly number[]) {
  const x = diagonal.map(() => 0)
  for (let i = diagonal.length - 1; i >= 0; i--) {
    let rest = b[i]!
    for (let k = i + 1; k < diagonal.length; k++) rest -= a[i]![k]! * x[k]!
    x[i] = rest / diagonal[i]!
  }
  return x
}
