/**
 * The arrow in the air as a free beam, on plain numbers (m, kg, N·m²): its lowest bending frequency. Written in slopes like
 * the column; the load of a slope is the lateral momentum Q(s) of all that is ahead of s, with the motion of the arrow as
 * a whole taken out.
 */
import { type BeamInput, type BeamWorkspace, meshBeam } from './beam-mesh'
import { type Bend, type Load, lowestMode } from './lowest-mode'

/** First bending frequency, Hz, both ends free; what lies beyond throat or shaft front rides on the end. */
export function freeFrequency(beam: BeamInput, w: BeamWorkspace): number {
  meshBeam(beam, w)
  let whole = beam.shaftMass
  for (let p = 0; p < beam.pieces; p++) whole += beam.mass[p]!
  const unit = beam.rigidity / (whole * beam.length ** 3)
  return Math.sqrt(lowestMode(w, inertia, bendFree) * unit) / (2 * Math.PI)
}

/*
 * Deflection in an element: v = v₀ + h·(t₀·Φ₀ + t₁·Φ₁ + b·Φ_b), the integrals of 1 − ξ, ξ and ξ(1 − ξ):
 * Φ₀ = ξ − ξ²/2, Φ₁ = ξ²/2, Φ_b = ξ²/2 − ξ³/3. The fractions below are ∫Φ, ∫ξΦ and ∫ΦΦ over 0..1.
 */
const inertia: Load = (w, x, load) => {
  const { elements, size, spread, lump, ahead } = w
  const bubbles = elements + 1
  const { drift, turn } = asOneBody(w, x)
  let deflection = 0
  for (let e = 0; e < elements; e++) deflection += size[e]! * ((x[e]! + x[e + 1]!) / 2 + x[bubbles + e]! / 6)
  deflection -= drift + turn
  let momentum = ahead * deflection
  load[elements] = 0
  for (let e = elements - 1; e >= 0; e--) {
    const h = size[e]!
    const m = spread[e]!
    const t0 = x[e]! - turn
    const t1 = x[e + 1]! - turn
    const b = x[bubbles + e]!
    deflection -= h * ((t0 + t1) / 2 + b / 6)
    const rear = m * (deflection / 3 + h * ((t0 * 2) / 15 + (t1 * 3) / 40 + (b * 13) / 360))
    const front = m * (deflection / 6 + h * ((t0 * 3) / 40 + t1 / 20 + b / 45))
    const middle = m * (deflection / 12 + h * ((t0 * 13) / 360 + t1 / 45 + (b * 13) / 1260))
    load[e] = h * (momentum / 2 + rear)
    load[e + 1]! += h * (momentum / 2 + front)
    load[bubbles + e] = h * (momentum / 6 + middle)
    momentum += m * (deflection + h * (t0 / 3 + t1 / 6 + b / 12)) + lump[e]! * deflection
  }
}

/** The drift at the throat and the turn that carry all of the momentum, lateral and about the throat. */
function asOneBody(w: BeamWorkspace, x: Float64Array): { drift: number; turn: number } {
  const { elements, size, spread, lump, place, ahead } = w
  const bubbles = elements + 1
  let first = ahead // moments of the mass about the throat; the mass itself is 1
  let second = ahead
  let lateral = 0
  let about = 0
  let deflection = 0
  for (let e = 0; e < elements; e++) {
    const h = size[e]!
    const m = spread[e]!
    const s = place[e]!
    const t0 = x[e]!
    const t1 = x[e + 1]!
    const b = x[bubbles + e]!
    const mean = deflection + h * (t0 / 3 + t1 / 6 + b / 12)
    lateral += m * mean
    about += m * (s * mean + h * (deflection / 2 + h * ((t0 * 5) / 24 + t1 / 8 + (b * 7) / 120)))
    first += m * (s + h / 2)
    second += m * (s * s + s * h + (h * h) / 3)
    deflection += h * ((t0 + t1) / 2 + b / 6)
    const front = place[e + 1]!
    const sits = lump[e + 1]!
    lateral += sits * deflection
    about += sits * deflection * front
    first += sits * front
    second += sits * front * front
  }
  lateral += ahead * deflection
  about += ahead * deflection
  const turn = (about - first * lateral) / (second - first * first)
  return { drift: lateral - first * turn, turn }
}

const bendFree: Bend = ({ elements, size, rigidity }, load, x) => {
  const bubbles = elements + 1
  let moment = 0
  x[0] = 0
  for (let e = 0; e < elements; e++) {
    moment -= load[e]!
    const compliance = size[e]! / rigidity[e]!
    x[bubbles + e] = 3 * compliance * load[bubbles + e]!
    x[e + 1] = x[e]! + compliance * moment
  }
}
