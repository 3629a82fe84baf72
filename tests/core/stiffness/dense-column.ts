/**
 * The same column, assembled the textbook way and solved by a library: cubic Hermite deflection elements, four Gauss points
 * each, dense matrices, mathjs for the eigenvalues. Shares nothing with the kernel but the arrow and the mesh.
 */
import { eigs, matrix } from 'mathjs'
import type { BeamInput } from '@/core/stiffness/beam-mesh'

/** Where elements end: every edge, each stretch between edges cut so that at least `least` come out. */
export function nodesOf(beam: BeamInput, least = 64): number[] {
  const edges = [beam.shaftRear, ...beam.from, ...beam.to].filter((at) => at > 0 && at < beam.length)
  const breaks = [...new Set([0, ...edges, beam.length])].sort((a, b) => a - b)
  return breaks.flatMap((rear, j) => {
    const front = breaks[j + 1]
    if (front === undefined) return [rear]
    const parts = Math.max(1, Math.ceil((least * (front - rear)) / beam.length))
    return Array.from({ length: parts }, (_, k) => rear + ((front - rear) * k) / parts)
  })
}

const pieces = (beam: BeamInput) =>
  Array.from({ length: beam.pieces }, (_, p) => ({
    from: beam.from[p]!,
    to: beam.to[p]!,
    mass: beam.mass[p]!,
    stiffening: beam.stiffening[p]!,
  }))

/** Share of the finished mass that lies ahead of a station. */
export function thrustAt(beam: BeamInput, s: number): number {
  const all = [...pieces(beam), { from: beam.shaftRear, to: beam.length, mass: beam.shaftMass }]
  const whole = all.reduce((total, { mass }) => total + mass, 0)
  const ahead = all.reduce((total, { from, to, mass }) => {
    const share = from >= s ? 1 : to <= s ? 0 : (to - s) / (to - from)
    return total + mass * share
  }, 0)
  return ahead / whole
}

/** Flexural rigidity at a station, N·m². */
export const rigidityAt = (beam: BeamInput, s: number) =>
  pieces(beam).reduce((ei, p) => (p.from < s && s < p.to ? ei + p.stiffening : ei), beam.rigidity)

// Abramowitz and Stegun, table 25.4, n = 4 (from memory)
const GAUSS = [
  [-0.861136311594053, 0.347854845137454],
  [-0.339981043584856, 0.652145154862546],
  [0.339981043584856, 0.652145154862546],
  [0.861136311594053, 0.347854845137454],
] as const

/** Critical force at the nock, N, hinged at both ends. */
export function denseCriticalForce(beam: BeamInput, least = 64): number {
  const nodes = nodesOf(beam, least)
  const n = 2 * nodes.length
  const stiff = square(n)
  const load = square(n)
  for (let e = 0; e + 1 < nodes.length; e++) {
    const h = nodes[e + 1]! - nodes[e]!
    for (const [point, weight] of GAUSS) {
      const x = (1 + point) / 2
      const s = nodes[e]! + x * h
      const curved = [(12 * x - 6) / h ** 2, (6 * x - 4) / h, (6 - 12 * x) / h ** 2, (6 * x - 2) / h]
      const sloped = [(6 * x * x - 6 * x) / h, 1 - 4 * x + 3 * x * x, (6 * x - 6 * x * x) / h, 3 * x * x - 2 * x]
      const ei = (rigidityAt(beam, s) * weight * h) / 2
      const thrust = (thrustAt(beam, s) * weight * h) / 2
      for (let i = 0; i < 4; i++)
        for (let j = 0; j < 4; j++) {
          stiff[2 * e + i]![2 * e + j]! += ei * curved[i]! * curved[j]!
          load[2 * e + i]![2 * e + j]! += thrust * sloped[i]! * sloped[j]!
        }
    }
  }
  const free = Array.from({ length: n }, (_, i) => i).filter((i) => i !== 0 && i !== n - 2)
  const pick = (m: number[][]) => free.map((i) => free.map((j) => m[i]![j]!))
  return 1 / greatestEigenvalue(pick(stiff), pick(load))
}

/** Greatest μ with G·x = μ·K·x, K positive definite: by Cholesky K = L·Lᵀ to the symmetric L⁻¹·G·L⁻ᵀ, and mathjs. */
function greatestEigenvalue(k: number[][], g: number[][]): number {
  const scale = k.map((row, i) => 1 / Math.sqrt(row[i]!))
  const scaled = (m: number[][]) => m.map((row, i) => row.map((v, j) => v * scale[i]! * scale[j]!))
  const l = cholesky(scaled(k))
  const half = forward(l, scaled(g))
  const whole = forward(l, transposed(half))
  const symmetric = whole.map((row, i) => row.map((v, j) => (v + whole[j]![i]!) / 2))
  const { values } = eigs(matrix(symmetric), { eigenvectors: false })
  return Math.max(...(values.valueOf() as number[]))
}

function cholesky(a: number[][]): number[][] {
  const l = square(a.length)
  for (let i = 0; i < a.length; i++)
    for (let j = 0; j <= i; j++) {
      let v = a[i]![j]!
      for (let k = 0; k < j; k++) v -= l[i]![k]! * l[j]![k]!
      l[i]![j] = i === j ? Math.sqrt(v) : v / l[j]![j]!
    }
  return l
}

const forward = (l: number[][], b: number[][]): number[][] => {
  const y: number[][] = []
  for (let i = 0; i < l.length; i++)
    y.push(b[i]!.map((v, c) => (v - y.reduce((total, row, k) => total + l[i]![k]! * row[c]!, 0)) / l[i]![i]!))
  return y
}

const transposed = (m: number[][]) => m.map((_, i) => m.map((row) => row[i]!))
const square = (n: number): number[][] => Array.from({ length: n }, () => Array.from({ length: n }, () => 0))
