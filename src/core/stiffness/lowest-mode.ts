/**
 * The lowest eigenvalue of a beam written in its slopes, by inverse iteration of two vectors together.
 *
 * The shape functions are those of the cubic Hermite beam element: a cubic deflection has a quadratic slope, so each
 * element carries its two nodal slopes and one bubble ξ(1 − ξ). In slopes the bending energy is
 * ∫EI·θ′² = EI/h·((t₁ − t₀)² + b²/3): the bubbles stand alone, the nodes form a chain, and a load is answered by two
 * running sums instead of a band factorisation. Same mesh, same eigenvalue, and no 1/h³ to lose digits to.
 */
import type { BeamWorkspace } from './beam-mesh'

/** Writes the load of slopes `x` into `load`. */
export type Load = (w: BeamWorkspace, x: Float64Array, load: Float64Array) => void
/** Writes the slopes that a load bends the beam to into `x`. */
export type Bend = (w: BeamWorkspace, load: Float64Array, x: Float64Array) => void

const CONVERGED = 1e-14 // relative change of the eigenvalue in one step
const MOST_STEPS = 400 // the third eigenvalue has to be within 4 % of the first before this many are needed
const DEPENDENT = 1e-13 // of its energy left to the second vector: it is the first one over again

/** The least λ with bend(λ·load(x)) = x. Two vectors, so that a second mode close to the first does no harm. */
export function lowestMode(w: BeamWorkspace, load: Load, bend: Bend): number {
  const { x, nextLoad } = w
  let { load: f } = w
  let g = nextLoad
  startVectors(w)
  load(w, x[0], f[0])
  load(w, x[1], f[1])
  const n = 2 * w.elements + 1
  let compliance = 0
  for (let step = 0; step < MOST_STEPS; step++) {
    bend(w, f[0], x[0])
    bend(w, f[1], x[1])
    load(w, x[0], g[0])
    load(w, x[1], g[1])
    const before = compliance
    compliance = rotate(x, f, g, n)
    if (Math.abs(compliance - before) <= CONVERGED * compliance) break
    const spare = f
    f = g
    g = spare
  }
  return 1 / compliance
}

/** A half wave leaning to the rear, and a whole wave. */
function startVectors({ elements, place, x: [first, second] }: BeamWorkspace): void {
  first.fill(0, 0, 2 * elements + 1)
  second.fill(0, 0, 2 * elements + 1)
  for (let i = 0; i <= elements; i++) {
    const s = place[i]!
    first[i] = 1 - 2 * s
    second[i] = 1 - 6 * s + 6 * s * s
  }
}

/**
 * Rayleigh and Ritz on the two vectors: leaves in them, and in their loads `g`, the two best combinations, each of unit
 * bending energy; `f` are the loads they were bent by. Returns the greater of the two values of 1/λ.
 */
function rotate([x0, x1]: Pair, [f0, f1]: Pair, [g0, g1]: Pair, n: number): number {
  let e00 = 0
  let e01 = 0
  let e11 = 0
  for (let i = 0; i < n; i++) {
    const a = x0[i]!
    const b = x1[i]!
    e00 += a * f0[i]!
    e01 += a * f1[i]!
    e11 += b * f1[i]!
  }
  const scale0 = 1 / Math.sqrt(e00)
  const lean = e01 / e00
  const own = e11 - lean * e01
  const scale1 = own > DEPENDENT * e11 ? 1 / Math.sqrt(own) : 0
  let m00 = 0
  let m01 = 0
  let m11 = 0
  for (let i = 0; i < n; i++) {
    const b = (x1[i]! - lean * x0[i]!) * scale1
    const gb = (g1[i]! - lean * g0[i]!) * scale1
    const a = x0[i]! * scale0
    const ga = g0[i]! * scale0
    x0[i] = a
    x1[i] = b
    g0[i] = ga
    g1[i] = gb
    m00 += a * ga
    m01 += a * gb
    m11 += b * gb
  }
  const half = (m00 - m11) / 2
  const turn = Math.atan2(m01, half) / 2
  const cos = Math.cos(turn)
  const sin = Math.sin(turn)
  for (let i = 0; i < n; i++) {
    const a = x0[i]!
    const b = x1[i]!
    const ga = g0[i]!
    const gb = g1[i]!
    x0[i] = cos * a + sin * b
    x1[i] = cos * b - sin * a
    g0[i] = cos * ga + sin * gb
    g1[i] = cos * gb - sin * ga
  }
  return (m00 + m11) / 2 + Math.hypot(half, m01)
}

type Pair = readonly [Float64Array, Float64Array]
