import { describe, expect, it } from 'vitest'
import { gigapascals, millimetres } from '@/core/quantity'
import { TUBE_BOUNDS, tubeRigidity } from '@/core/stiffness/tube-rigidity'
import { answer } from '@tests/support/answer'

const tube = (outer: number, bore: number, modulus: number) =>
  tubeRigidity({
    outerDiameter: millimetres(outer),
    innerDiameter: millimetres(bore),
    youngsModulus: gigapascals(modulus),
  })

describe('tubeRigidity', () => {
  it('is E·π·D⁴/64 of a solid post', () => {
    // Section tables: I of a ⌀5 mm rod is 30.68 mm⁴ (from memory); times 200 GPa
    expect(Math.abs(answer(tube(5, 0, 200)) - 6.136)).toBeLessThanOrEqual(0.0005)
  })

  it('is what the bore leaves of the solid one', () => {
    expect(answer(tube(6, 4, 70))).toBeCloseTo(answer(tube(6, 0, 70)) - answer(tube(4, 0, 70)), 12)
  })

  it('is nothing when the bore takes it all', () => {
    expect(answer(tube(6, 6, 70))).toBe(0)
  })

  it.each([
    [40.01, 0, 70, 'outer diameter of tube'],
    [-0.01, 0, 70, 'outer diameter of tube'],
    [NaN, 0, 70, 'outer diameter of tube'],
    [5, -0.01, 70, 'inner diameter of tube'],
    [5, NaN, 70, 'inner diameter of tube'],
    [5, 0, -1, 'modulus of tube'],
    [5, 0, 1000.1, 'modulus of tube'],
    [5, 0, Infinity, 'modulus of tube'],
  ])('gives no rigidity for ⌀%d mm, bore %d mm, %d GPa', (outer, bore, modulus, input) => {
    expect(tube(outer, bore, modulus).findings[0]).toMatchObject({ code: 'outside-model', input })
  })

  it('names a bore wider than the tube', () => {
    expect(tube(5, 5.01, 70)).toMatchObject({ ok: false, findings: [{ code: 'bore-wider-than-tube', part: 'tube' }] })
  })

  it('takes the bounds themselves', () => {
    expect(answer(tube(40, 0, 1000))).toBeGreaterThan(0)
    expect(TUBE_BOUNDS.diameter.max).toBe(millimetres(40))
  })
})
