/**
 * The column of a combination, put straight into the kernel's arrays: kg, m, N·m². The same arrow lifted from a plan gives
 * the same reserve; a test holds the two together.
 */
import { grains, inches, poundsForce } from '../../core/quantity'
import { type BeamInput, beamInput, type BeamWorkspace, beamWorkspace } from '../../core/stiffness/beam-mesh'
import { criticalNockForce } from '../../core/stiffness/critical-nock-force'
import type { Body } from './body'
import { type Front, frontPieces } from './front'
import type { PieceAt } from './piece-at'
import { comesOff } from './post-trim'
import type { Rear } from './rear'
import type { SearchProblem } from './wishes'

const MOST_PIECES = 16
const ROUGH_ELEMENTS = 8
const KG = grains(1) // of a grain
const M = inches(1) // of an inch

export interface Solver {
  readonly beam: BeamInput
  readonly room: BeamWorkspace
  /** A coarse mesh: see {@link reserveRoughly}. */
  readonly rough: BeamWorkspace
  /** N and kg, of the bow. */
  readonly peak: number
  readonly virtual: number
}

export const solverFor = ({ peakDrawLb, virtualMassGr }: NonNullable<SearchProblem['launch']>): Solver => ({
  beam: beamInput(MOST_PIECES),
  room: beamWorkspace(MOST_PIECES),
  rough: beamWorkspace(MOST_PIECES, ROUGH_ELEMENTS),
  peak: poundsForce(peakDrawLb),
  virtual: grains(virtualMassGr),
})

function begin({ beam }: Solver, body: Body): void {
  beam.length = body.lengthIn * M
  beam.rigidity = body.rigidity
  beam.shaftMass = body.shaftGr * KG
  beam.shaftRear = body.tail.standoutIn * M
  beam.pieces = 0
}

function put({ beam }: Solver, gr: number, fromIn: number, toIn: number, stiffening: number): void {
  const i = beam.pieces
  beam.from[i] = fromIn * M
  beam.to[i] = toIn * M
  beam.mass[i] = gr * KG
  beam.stiffening[i] = stiffening
  beam.pieces = i + 1
}

function putAll(solver: Solver, pieces: readonly PieceAt[], originIn: number): void {
  for (const { gr, fromIn, toIn, stiffening } of pieces) put(solver, gr, originIn + fromIn, originIn + toIn, stiffening)
}

/** F_cr/F_nock of the finished arrow. */
export const reserveOf = (solver: Solver, body: Body, rear: Rear, front: Front, trimGr: number): number =>
  reserveOn(solver, solver.room, body, rear, front, trimGr)

/**
 * Ends between which {@link reserveOf} lies, for a quarter of its time. A coarse mesh of cubic elements is never below the
 * fine one's answer but by rounding, and above it by (π/n)⁴/720 of n elements at most, 3.3e-5 of eight [TIMO]; a test
 * holds it to half of the slack.
 */
export function reserveRoughly(solver: Solver, body: Body, rear: Rear, front: Front, trimGr: number): Ends {
  const rough = reserveOn(solver, solver.rough, body, rear, front, trimGr)
  return [rough * (1 - ROUGH_SLACK), rough * (1 + SLACK)]
}
const ROUGH_SLACK = 1e-4

export type Ends = readonly [low: number, high: number]

function reserveOn(solver: Solver, room: BeamWorkspace, body: Body, rear: Rear, front: Front, trimGr: number): number {
  begin(solver, body)
  putAll(solver, body.tail.pieces, 0)
  putAll(solver, rear.pieces, 0)
  if (rear.wrapGr > 0) put(solver, rear.wrapGr, body.tail.standoutIn, body.tail.standoutIn + rear.wrapIn, 0)
  putAll(solver, frontPieces(front, trimGr), body.lengthIn)
  const mass = (body.weightGr + rear.weightGr + front.weightGr - comesOff(front.trim, trimGr)) * KG
  return (criticalNockForce(solver.beam, room) * (mass + solver.virtual)) / (solver.peak * mass)
}

/** What is known of all combinations on one body before any is looked at. Grains, inches, N·m². */
export interface Envelope {
  /** Finished weight. */
  readonly lightestGr: number
  readonly heaviestGr: number
  readonly leastRearGr: number
  readonly mostRearGr: number
  /** Furthest front of any vane or wrap, from the throat. */
  readonly rearFrontIn: number
  /** Most weight of any front behind the shaft front, how far back, and the most it stiffens. */
  readonly mostInsideGr: number
  readonly insideIn: number
  readonly mostStiffening: number
}

const SLACK = 1e-5 // of the kernel's mesh, many times over

/**
 * Ends between which the reserve of every combination in the envelope lies.
 *
 * With Q(s) the mass ahead of s, 1/Λ = max over w of ∫Q·w′²/∫EI·w″² and reserve = Λ·(m + m_v)/F_peak. So the reserve falls
 * wherever Q grows and rises wherever EI does: two columns, one with every mass as far forward and as heavy as any may be
 * and nothing bonded, one with every mass as far back and as light, bonded as stiff as any, enclose all.
 */
export function reserveBetween(solver: Solver, body: Body, e: Envelope): Ends {
  const standing = body.weightGr
  const aheadMost = e.heaviestGr - standing - e.leastRearGr
  let low = 0
  if (aheadMost >= 0) {
    begin(solver, body)
    putAll(solver, body.tail.pieces, 0)
    put(solver, e.leastRearGr, e.rearFrontIn, e.rearFrontIn, 0)
    put(solver, aheadMost, body.lengthIn, body.lengthIn, 0)
    low = bound(solver, e.heaviestGr, e.lightestGr) * (1 - SLACK)
  }
  const aheadLeast = e.lightestGr - standing - e.mostRearGr - e.mostInsideGr
  if (aheadLeast < 0) return [low, Infinity]
  begin(solver, body)
  putAll(solver, body.tail.pieces, 0)
  put(solver, e.mostRearGr, 0, 0, 0)
  const insideRear = body.lengthIn - e.insideIn
  put(solver, e.mostInsideGr, insideRear, insideRear, 0)
  put(solver, 0, insideRear, body.lengthIn, e.mostStiffening)
  put(solver, aheadLeast, body.lengthIn, body.lengthIn, 0)
  return [low, bound(solver, e.lightestGr, e.heaviestGr) * (1 + SLACK)]
}

/** Λ of the column in the solver times the least or most of (m + m_v)/F_peak. */
const bound = (solver: Solver, columnGr: number, flyingGr: number) =>
  (criticalNockForce(solver.beam, solver.room) / (columnGr * KG)) * ((flyingGr * KG + solver.virtual) / solver.peak)
