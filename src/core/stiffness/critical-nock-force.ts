/**
 * The real column, on plain numbers: the least force at the nock that the shaft, held at throat and shaft front by hinges
 * and loaded by the inertia of all that is ahead of each station, can no longer carry straight.
 *
 *   (EI·θ′)′ + F·n(s)·θ = V,   ∫θ ds = 0,   n(s) = mass ahead of s / finished mass
 *
 * with θ the slope of the shaft and V the side force at the hinges [TIMO]. One solve takes some tens of microseconds.
 */
import { type BeamInput, type BeamWorkspace, meshBeam } from './beam-mesh'
import { type Bend, type Load, lowestMode } from './lowest-mode'

/** How the ends are held. `clamped at the throat` is for holding the kernel against published columns. */
export type Support = 'hinged' | 'clamped at the throat'

/**
 * Force at the nock, N, under which the column first buckles.
 *
 * @param beam length, rigidity and shaft mass above 0, shaft rear behind the front, no piece running backwards
 * @param w workspace with room for the beam's pieces; its contents are overwritten, nothing is allocated
 */
export function criticalNockForce(beam: BeamInput, w: BeamWorkspace, support: Support = 'hinged'): number {
  meshBeam(beam, w)
  weighThrust(w)
  return (lowestMode(w, thrust, BEND[support]) * beam.rigidity) / beam.length ** 2
}

/**
 * ∫n·φᵢ·φⱼ over each element, exact for the thrust n that falls linearly along it; φ are 1 − ξ, ξ and ξ(1 − ξ). A mass on
 * a node steps the thrust there.
 */
function weighThrust({ elements, ahead, size, spread, lump, coefficients: c }: BeamWorkspace): void {
  let front = ahead
  for (let e = elements - 1; e >= 0; e--) {
    const h = size[e]!
    const fall = spread[e]!
    const rear = front + fall
    c[6 * e] = h * (rear / 3 - fall / 12)
    c[6 * e + 1] = h * (rear / 6 - fall / 12)
    c[6 * e + 2] = h * (rear / 3 - fall / 4)
    c[6 * e + 3] = h * (rear / 12 - fall / 30)
    c[6 * e + 4] = h * (rear / 12 - fall / 20)
    c[6 * e + 5] = h * (rear / 30 - fall / 60)
    front = rear + lump[e]!
  }
}

const thrust: Load = ({ elements, coefficients: c }, x, load) => {
  const bubbles = elements + 1
  let carried = 0
  for (let e = 0; e < elements; e++) {
    const rear = x[e]!
    const front = x[e + 1]!
    const bubble = x[bubbles + e]!
    const c01 = c[6 * e + 1]!
    const c0b = c[6 * e + 3]!
    const c1b = c[6 * e + 4]!
    load[e] = carried + c[6 * e]! * rear + c01 * front + c0b * bubble
    carried = c01 * rear + c[6 * e + 2]! * front + c1b * bubble
    load[bubbles + e] = c0b * rear + c1b * front + c[6 * e + 5]! * bubble
  }
  load[elements] = carried
}

/** The side force V balances the load, and the shaft is turned until both hinges are on the line. */
const bendHinged: Bend = ({ elements, size, rigidity }, load, x) => {
  const bubbles = elements + 1
  let side = 0
  for (let i = 0; i <= elements; i++) side += load[i]!
  let moment = 0
  let slope = 0
  let deflection = 0
  x[0] = 0
  let h = 0
  for (let e = 0; e < elements; e++) {
    moment -= load[e]! - (side * (h + size[e]!)) / 2
    h = size[e]!
    const compliance = h / rigidity[e]!
    const bubble = 3 * compliance * (load[bubbles + e]! - (side * h) / 6)
    const next = slope + compliance * moment
    deflection += h * ((slope + next) / 2 + bubble / 6)
    x[bubbles + e] = bubble
    x[e + 1] = next
    slope = next
  }
  for (let i = 0; i <= elements; i++) x[i]! -= deflection
}

/** No side force; the moment is nothing at the free front. */
const bendClamped: Bend = ({ elements, size, rigidity }, load, x) => {
  const bubbles = elements + 1
  let moment = 0
  for (let i = 1; i <= elements; i++) moment += load[i]!
  x[0] = 0
  for (let e = 0; e < elements; e++) {
    const compliance = size[e]! / rigidity[e]!
    x[bubbles + e] = 3 * compliance * load[bubbles + e]!
    x[e + 1] = x[e]! + compliance * moment
    moment -= load[e + 1]!
  }
}

const BEND: Readonly<Record<Support, Bend>> = { hinged: bendHinged, 'clamped at the throat': bendClamped }
