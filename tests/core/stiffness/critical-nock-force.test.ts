// long because closed forms, laws and a dense solve are held against one function
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BeamInput, beamInput, beamWorkspace } from '@/core/stiffness/beam-mesh'
import { criticalNockForce } from '@/core/stiffness/critical-nock-force'
import { denseCriticalForce, rigidityAt, thrustAt } from './dense-column'

const w = beamWorkspace()

interface PlainPiece {
  from: number
  to: number
  mass: number
  stiffening?: number
}
function beam(shaft: Partial<BeamInput>, ...pieces: PlainPiece[]): BeamInput {
  const made = Object.assign(beamInput(pieces.length), { length: 1, rigidity: 1, shaftMass: 1, shaftRear: 0 }, shaft)
  pieces.forEach(({ from, to, mass, stiffening = 0 }, i) => {
    made.from[i] = from
    made.to[i] = to
    made.mass[i] = mass
    made.stiffening[i] = stiffening
  })
  return made
}
const headed = (share: number, shaft: Partial<BeamInput> = {}) =>
  beam(shaft, { from: shaft.length ?? 1, to: shaft.length ?? 1, mass: share })

const onGrid = (share: number, grid: number) => (grid === 0 ? share : Math.round(share / grid) * grid)

/** An arrow of ordinary proportions, SI, with up to six parts anywhere, bonded or not; edges on `grid` of its length. */
const anyBeam = (grid = 0) =>
  fc
    .record({
      length: fc.double({ min: 0.3, max: 1, noNaN: true }),
      rigidity: fc.double({ min: 1, max: 30, noNaN: true }),
      shaftMass: fc.double({ min: 0.005, max: 0.04, noNaN: true }),
      rear: fc.double({ min: -0.05, max: 0.1, noNaN: true }),
      parts: fc.array(
        fc.record({
          at: fc.double({ min: -0.05, max: 1.1, noNaN: true }),
          reach: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.5, noNaN: true })),
          mass: fc.double({ min: 0, max: 0.05, noNaN: true }),
          stiffening: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 100, noNaN: true })),
        }),
        { maxLength: 6 },
      ),
    })
    .map(({ length, rigidity, shaftMass, rear, parts }) =>
      beam(
        { length, rigidity, shaftMass, shaftRear: onGrid(rear, grid) * length },
        ...parts.map(({ at, reach, mass, stiffening }) => ({
          from: onGrid(at, grid) * length,
          to: (onGrid(at, grid) + onGrid(reach, grid)) * length,
          mass,
          stiffening,
        })),
      ),
    )

describe('criticalNockForce against closed forms', () => {
  it('is Euler’s π²·EI/L² where all of the mass is in front', () => {
    // [EULER] hinged column under end load; a front mass a billion times the shaft's
    expect(Math.abs(criticalNockForce(headed(1e9), w) / Math.PI ** 2 - 1)).toBeLessThan(1e-8)
  })

  it('is a quarter of that, π²·EI/(4L²), clamped at the throat and free in front', () => {
    // [EULER] clamped-free column under end load
    expect(Math.abs(criticalNockForce(headed(1e9), w, 'clamped at the throat') / (Math.PI ** 2 / 4) - 1)).toBeLessThan(
      1e-8,
    )
  })

  it('is Greenhill’s 7.8373·EI/L² for a clamped-free column under its own weight', () => {
    // [GREENHILL] as quoted in design practice to five digits
    expect(Math.abs(criticalNockForce(beam({}), w, 'clamped at the throat') - 7.8373)).toBeLessThanOrEqual(0.00005)
  })

  it.each([
    // Finite elements and shooting, computed apart from this project's kernel [OWN]
    { share: 0, printed: 18.5687, half: 0.00005 },
    { share: 0.25, printed: 15.984, half: 0.0005 },
    { share: 0.5, printed: 14.562, half: 0.0005 },
    { share: 1, printed: 13.062, half: 0.0005 },
    { share: 2, printed: 11.812, half: 0.0005 },
  ])('is $printed·EI/L² for a hinged shaft with $share of its mass in front', ({ share, printed, half }) => {
    expect(Math.abs(criticalNockForce(headed(share), w) - printed)).toBeLessThanOrEqual(half)
  })

  it('nears the closed form with the fourth power of the element, and is within 1e-5 at 64', () => {
    const error = (n: number) => criticalNockForce(headed(1e12), beamWorkspace(1, n)) / Math.PI ** 2 - 1
    expect(error(64)).toBeLessThan(1e-5)
    expect(error(4) / error(8)).toBeGreaterThan(14)
    expect(error(8) / error(16)).toBeGreaterThan(15)
    expect(error(4)).toBeGreaterThan(0)
  })
})

describe('criticalNockForce against other methods', () => {
  const post = { from: 0.62, to: 0.7, mass: 0.012, stiffening: 7 }
  const heavy = beam(
    { length: 0.7125, rigidity: 12.7, shaftMass: 0.0221, shaftRear: 0.014 },
    { from: 0, to: 0.014, mass: 0.0007 },
    { from: 0.03, to: 0.1, mass: 0.0018 },
    post,
    { from: 0.69, to: 0.7125, mass: 0.002, stiffening: 3 },
    { from: 0.7, to: 0.7, mass: 0.00014 },
    { from: 0.7, to: 0.76, mass: 0.0162 },
  )

  it('agrees to 1e-8 with a dense library solve of the same mesh in deflections', { timeout: 60_000 }, () => {
    expect(Math.abs(criticalNockForce(heavy, w) / denseCriticalForce(heavy) - 1)).toBeLessThan(1e-8)
  })

  it('agrees to 1e-8 with the dense solve for arrows of any make', { timeout: 60_000 }, () => {
    const coarse = beamWorkspace(8, 12)
    fc.assert(
      fc.property(anyBeam(0.01), (b) => {
        expect(Math.abs(criticalNockForce(b, coarse) / denseCriticalForce(b, 12) - 1)).toBeLessThan(1e-8)
      }),
      { numRuns: 60 },
    )
  })

  it('agrees with shooting the equation from the throat', { timeout: 60_000 }, () => {
    expect(Math.abs(shot(heavy) / criticalNockForce(heavy, w) - 1)).toBeLessThan(1e-6)
  })
})

describe('criticalNockForce as a law', () => {
  it('is proportional to the rigidity and to the inverse square of the length, whatever the weight', () => {
    fc.assert(
      fc.property(
        anyBeam(),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (b, stiffer, longer, heavier) => {
          const scaled = {
            ...b,
            length: b.length * longer,
            rigidity: b.rigidity * stiffer,
            shaftMass: b.shaftMass * heavier,
            shaftRear: b.shaftRear * longer,
            from: b.from.map((s) => s * longer),
            to: b.to.map((s) => s * longer),
            mass: b.mass.map((m) => m * heavier),
            stiffening: b.stiffening.map((ei) => ei * stiffer),
          }
          expect((criticalNockForce(scaled, w) * longer ** 2) / stiffer / criticalNockForce(b, w)).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  it('never falls when a tube is bonded in', () => {
    fc.assert(
      fc.property(anyBeam(), (b) => {
        const bare = { ...b, stiffening: b.stiffening.map(() => 0) }
        expect(criticalNockForce(b, w)).toBeGreaterThanOrEqual(criticalNockForce(bare, w) * (1 - 1e-12))
      }),
    )
  })

  it('falls as weight is added in front and rises as it is added at the throat', () => {
    fc.assert(
      fc.property(anyBeam(), fc.double({ min: 0.001, max: 0.1, noNaN: true }), (b, mass) => {
        const withMass = (at: number) =>
          criticalNockForce(
            {
              ...b,
              pieces: b.pieces + 1,
              from: grown(b.from, at),
              to: grown(b.to, at),
              mass: grown(b.mass, mass),
              stiffening: grown(b.stiffening, 0),
            },
            w,
          )
        const before = criticalNockForce(b, w)
        expect(withMass(b.length)).toBeLessThanOrEqual(before)
        expect(withMass(0)).toBeGreaterThanOrEqual(before)
      }),
    )
  })

  it('takes a part in two halves for the whole, and the order of the parts for nothing', () => {
    const whole = beam({}, { from: 0.4, to: 0.9, mass: 2, stiffening: 3 }, { from: 1, to: 1.2, mass: 1 })
    const halves = beam(
      {},
      { from: 1, to: 1.2, mass: 1 },
      { from: 0.6, to: 0.9, mass: 1.2, stiffening: 3 },
      { from: 0.4, to: 0.6, mass: 0.8, stiffening: 3 },
    )
    expect(criticalNockForce(halves, w) / criticalNockForce(whole, w)).toBeCloseTo(1, 8)
  })
})

describe('criticalNockForce under strain', () => {
  it('is the same for edges a hair apart as for one edge', () => {
    const one = beam({}, { from: 0.5, to: 1, mass: 1, stiffening: 2 })
    const two = beam({}, { from: 0.5, to: 1, mass: 1, stiffening: 2 }, { from: 0.5 - 1e-15, to: 0.5, mass: 0 })
    expect(criticalNockForce(two, w) / criticalNockForce(one, w)).toBeCloseTo(1, 10)
  })

  it('finds the lower of two modes that lie close together', { timeout: 60_000 }, () => {
    // Stiff but for two soft places: the half wave and the whole wave nearly agree.
    const b = beam(
      {},
      { from: 0, to: 0.2, mass: 0, stiffening: 1e4 },
      { from: 0.21, to: 0.79, mass: 0, stiffening: 1e4 },
      { from: 0.8, to: 1, mass: 0, stiffening: 1e4 },
      { from: 1, to: 1, mass: 1e6 },
    )
    expect(Math.abs(criticalNockForce(b, beamWorkspace(8, 12)) / denseCriticalForce(b, 12) - 1)).toBeLessThan(1e-7)
  })

  it('answers where nearly all of the mass sits at one point', () => {
    // Thrust on a vanishing stretch δ at the hinge: a beam turned at its end resists with 3·EI/L, so λ·δ = 3 (slope tables)
    for (const at of [1e-7, 1e-9, 1e-11]) {
      const found = criticalNockForce(beam({ shaftMass: 1e-18 }, { from: at, to: at, mass: 1 }), w)
      expect(found * at).toBeCloseTo(3, 4)
    }
  })

  it('refuses more parts than the workspace has room for', () => {
    expect(() => criticalNockForce(beamInput(9), beamWorkspace(8))).toThrow(RangeError)
  })

  it('is the same whatever the workspace held before', () => {
    const fresh = criticalNockForce(headed(0.7), beamWorkspace())
    criticalNockForce(
      beam({ length: 3 }, { from: 0.2, to: 2.5, mass: 4, stiffening: 9 }, { from: 1, to: 1, mass: 3 }),
      w,
    )
    expect(criticalNockForce(headed(0.7), w)).toBe(fresh)
  })
})

const grown = (list: Float64Array, n: number) => Float64Array.from([...list, n])

/**
 * Second method: EI·v″ + moment balance as four first-order equations, shot from the throat by Runge and Kutta, the force
 * found by bisection on the determinant of the hinge at the front. No elements, no matrices.
 */
function shot(b: BeamInput): number {
  const edges = [b.shaftRear, ...b.from, ...b.to].filter((at) => at > 0 && at < b.length)
  const breaks = [...new Set([0, ...edges, b.length])].sort((x, y) => x - y)
  // y = [v, θ, M, V] with v′ = θ, EI·θ′ = M, M′ = V − F·n·θ, V constant
  const slopeAt = (s: number, ei: number, force: number, [, th, m, v]: readonly number[]) => [
    th!,
    m! / ei,
    v! - force * thrustAt(b, s) * th!,
    0,
  ]
  const ends = (force: number, start: readonly number[]) => {
    let y = [...start]
    breaks.slice(1).forEach((front, j) => {
      const rear = breaks[j]!
      const steps = Math.max(4, Math.ceil((400 * (front - rear)) / b.length))
      const h = (front - rear) / steps
      const ei = rigidityAt(b, (rear + front) / 2)
      const inside = (s: number) => Math.min(front - 1e-12, Math.max(rear + 1e-12, s))
      for (let k = 0; k < steps; k++) {
        const s = rear + k * h
        const add = (d: number[], f: number) => y.map((v, i) => v + f * d[i]!)
        const k1 = slopeAt(inside(s), ei, force, y)
        const k2 = slopeAt(inside(s + h / 2), ei, force, add(k1, h / 2))
        const k3 = slopeAt(inside(s + h / 2), ei, force, add(k2, h / 2))
        const k4 = slopeAt(inside(s + h), ei, force, add(k3, h))
        y = y.map((v, i) => v + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!))
      }
    })
    return y
  }
  const determinant = (force: number) => {
    const a = ends(force, [0, 1, 0, 0])
    const c = ends(force, [0, 0, 0, 1])
    return a[0]! * c[2]! - a[2]! * c[0]!
  }
  const unit = b.rigidity / b.length ** 2
  let low = unit
  let high = 2 * unit
  while (determinant(high) * determinant(low) > 0) high += unit
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (determinant(middle) * determinant(low) > 0) low = middle
    else high = middle
  }
  return low
}
