/**
 * The arrow between throat and shaft front cut into beam elements, on plain numbers and reusable arrays: the search
 * solves tens of thousands of columns in a second. Going in: m, kg, N·m². In the workspace everything is a share: lengths
 * of the arrow's length, rigidity of the shaft's, mass of the finished mass.
 */

/** One arrow as the kernels take it: m, kg, N·m². The arrays may be longer than `pieces`. */
export interface BeamInput {
  length: number
  rigidity: number
  shaftMass: number
  shaftRear: number
  pieces: number
  readonly from: Float64Array
  readonly to: Float64Array
  readonly mass: Float64Array
  /** E·I of the tube bonded over the piece's interval, 0 where none is. */
  readonly stiffening: Float64Array
}

export interface BeamWorkspace {
  readonly leastElements: number
  readonly capacity: number
  /** Elements in the mesh at hand. */
  elements: number
  /** Mass ahead of the shaft front, as a share. */
  ahead: number
  readonly breaks: Float64Array
  /** By element: its length, its rigidity, and the mass spread over it. */
  readonly size: Float64Array
  readonly rigidity: Float64Array
  readonly spread: Float64Array
  /** By node: its place, and the mass that sits there. */
  readonly place: Float64Array
  readonly lump: Float64Array
  /** Six coefficients an element, for the kernel that fills them. */
  readonly coefficients: Float64Array
  /** Slope vectors and their loads: nodal slopes first, then one bubble an element. */
  readonly x: readonly [Float64Array, Float64Array]
  readonly load: readonly [Float64Array, Float64Array]
  readonly nextLoad: readonly [Float64Array, Float64Array]
}

/** Room for arrows of up to `pieces` pieces, solved on a mesh of at least `leastElements` elements. */
export function beamWorkspace(pieces = 24, leastElements = 64): BeamWorkspace {
  const capacity = 2 * pieces + leastElements + 3
  const floats = (n: number) => new Float64Array(n)
  const pair = () => [floats(2 * capacity + 1), floats(2 * capacity + 1)] as const
  return {
    leastElements,
    capacity,
    elements: 0,
    ahead: 0,
    breaks: floats(2 * pieces + 3),
    size: floats(capacity),
    rigidity: floats(capacity),
    spread: floats(capacity),
    place: floats(capacity + 1),
    lump: floats(capacity + 1),
    coefficients: floats(6 * capacity),
    x: pair(),
    load: pair(),
    nextLoad: pair(),
  }
}

let scratch = beamWorkspace()
/** One workspace that callers in turn overwrite, never smaller than asked for. */
export function scratchWorkspace(pieces: number): BeamWorkspace {
  if (2 * pieces + 3 > scratch.breaks.length) scratch = beamWorkspace(pieces)
  return scratch
}

/** Room for a beam of up to `pieces` pieces, to be filled in place. */
export const beamInput = (pieces: number): BeamInput => ({
  length: 0,
  rigidity: 0,
  shaftMass: 0,
  shaftRear: 0,
  pieces,
  from: new Float64Array(pieces),
  to: new Float64Array(pieces),
  mass: new Float64Array(pieces),
  stiffening: new Float64Array(pieces),
})

/**
 * Fills the workspace with the mesh of one arrow. Elements end at every edge of a piece, so that rigidity and weight
 * per length are constant within each; mass at a point sits on a node. Nothing later divides by an element's length, so edges may be
 * as near to each other as they like.
 *
 * @throws RangeError when the arrow has more pieces than the workspace has room for
 */
export function meshBeam(beam: BeamInput, w: BeamWorkspace): void {
  if (2 * beam.pieces + 3 > w.breaks.length) throw new RangeError(`room for fewer than ${beam.pieces} pieces`)
  const { length, pieces, from, to, mass, stiffening } = beam
  let whole = beam.shaftMass
  for (let p = 0; p < pieces; p++) whole += mass[p]!
  const last = findBreaks(beam, w.breaks)

  w.ahead = 0
  for (let p = 0; p < pieces; p++) {
    // Mass at the shaft front itself is carried by all of the shaft.
    w.ahead += from[p]! >= length ? mass[p]! : massAhead(from[p]!, to[p]!, length, mass[p]!)
  }
  w.ahead /= whole

  let e = 0
  w.place[0] = 0
  w.lump[0] = 0
  for (let j = 0; j < last; j++) {
    const rear = w.breaks[j]!
    const front = w.breaks[j + 1]!
    const reach = front - rear
    let spread = beam.shaftRear <= rear ? beam.shaftMass * (reach / (length - beam.shaftRear)) : 0
    let rigidity = beam.rigidity
    let lump = 0
    for (let p = 0; p < pieces; p++) {
      if (from[p]! <= rear && to[p]! >= front) {
        spread += mass[p]! * (reach / (to[p]! - from[p]!))
        rigidity += stiffening[p]!
      } else if (from[p] === front && to[p] === front && j + 1 < last) lump += mass[p]!
    }
    const parts = Math.max(1, Math.ceil((w.leastElements * reach) / length))
    for (let k = 1; k <= parts; k++, e++) {
      w.size[e] = reach / parts / length
      w.rigidity[e] = rigidity / beam.rigidity
      w.spread[e] = spread / parts / whole
      w.place[e + 1] = (rear + (reach * k) / parts) / length
      w.lump[e + 1] = 0
    }
    w.lump[e] = lump / whole
  }
  w.elements = e
}

/** Puts throat, shaft front and every edge between them in order, each once; returns the index of the last. */
function findBreaks(beam: BeamInput, breaks: Float64Array): number {
  breaks[0] = 0
  breaks[1] = beam.length
  let last = insertBreak(breaks, 1, beam.shaftRear)
  for (let p = 0; p < beam.pieces; p++) {
    last = insertBreak(breaks, last, beam.from[p]!)
    last = insertBreak(breaks, last, beam.to[p]!)
  }
  return last
}

function insertBreak(breaks: Float64Array, last: number, at: number): number {
  if (!(at > 0 && at < breaks[last]!)) return last
  let i = last
  while (breaks[i - 1]! > at) i--
  if (breaks[i - 1] === at) return last
  breaks.copyWithin(i + 1, i, last + 1)
  breaks[i] = at
  return last + 1
}

/** How much of a mass spread from `from` to `to` lies ahead of a place in front of `from`. */
const massAhead = (from: number, to: number, place: number, mass: number) =>
  to > place ? mass * ((to - place) / (to - from)) : 0
