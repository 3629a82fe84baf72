import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dragDecay } from '@/core/flight/drag-decay'
import { dragFromTwoSpeeds } from '@/core/flight/drag-from-two-speeds'
import { flatFire } from '@/core/flight/flat-fire'
import { feetPerSecond, grains, kilogramsPerCubicMetre, metres, millimetres, ratio, yards } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

const ARROW = { mass: grains(650), diameter: millimetres(6.2), density: kilogramsPerCubicMetre(1.225) }
const flown = (near: number, far: number, yd: number) => ({
  ...ARROW,
  near: feetPerSecond(near),
  far: feetPerSecond(far),
  apart: yards(yd),
})
const codes = (outcome: { readonly findings: readonly { readonly code: string }[] }) =>
  outcome.findings.map(({ code }) => code)

describe('dragFromTwoSpeeds', () => {
  // Page of flat fire backwards: 250 and 238.242 ft/s 60 yd apart are C_d 2.0 to the digits of the speed.
  it('is 2.0 from the closed-form speeds of an arrow of 2.0', () => {
    expect(Math.abs(answer(dragFromTwoSpeeds(flown(250, 238.242, 60))).value - 2)).toBeLessThan(0.0001)
  })

  it('returns any coefficient from the speeds it makes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 6, noNaN: true }),
        fc.double({ min: 60, max: 150, noNaN: true }),
        fc.double({ min: 150, max: 350, noNaN: true }),
        (drag, m, fps) => {
          const decay = answer(dragDecay({ ...ARROW, drag: ratio(drag) }))
          const far = answer(flatFire(feetPerSecond(fps), decay, metres(m))).speed
          const two = { ...ARROW, near: feetPerSecond(fps), far, apart: metres(m) }
          return Math.abs(answer(dragFromTwoSpeeds(two, feetPerSecond(0.1))).value / drag - 1) < 1e-9
        },
      ),
    )
  })

  // Seeded Monte Carlo of 20,000 pairs; 3 % covers sampling and curvature.
  it('carries the error of both speeds as a Monte Carlo does', () => {
    const normal = seededNormal(23)
    const found = Array.from(
      { length: 20_000 },
      () =>
        answer(dragFromTwoSpeeds(flown(250 + 0.5 * normal(), 238.242 + 0.5 * normal(), 60), feetPerSecond(0.5))).value,
    )
    const mean = found.reduce((a, b) => a + b, 0) / found.length
    const sd = Math.sqrt(found.reduce((a, b) => a + (b - mean) ** 2, 0) / found.length)
    const expected = answer(dragFromTwoSpeeds(flown(250, 238.242, 60), feetPerSecond(0.5))).sd
    expect(Math.abs(sd / expected - 1)).toBeLessThan(0.03)
  })

  it('says when the distance is short for the error, and gives nothing when it is far too short', () => {
    expect(codes(dragFromTwoSpeeds(flown(250, 238.242, 60), feetPerSecond(0.5)))).toEqual([])
    expect(codes(dragFromTwoSpeeds(flown(250, 246.018, 20), feetPerSecond(1.5)))).toEqual(['distances-too-close'])
    expect(dragFromTwoSpeeds(flown(250, 249, 5))).toMatchObject({
      ok: false,
      findings: [{ code: 'distances-too-close' }],
    })
  })

  // [MIYAZAKI20] 1.3 to 2.6.
  it('says when the coefficient is outside those published for arrows', () => {
    expect(codes(dragFromTwoSpeeds(flown(250, 230, 60), feetPerSecond(0.5)))).toEqual(['drag-beyond-published'])
    expect(codes(dragFromTwoSpeeds(flown(250, 244, 60), feetPerSecond(0.5)))).toEqual(['drag-beyond-published'])
  })

  it('refuses a speed that does not fall', () => {
    for (const far of [250, 251])
      expect(codes(dragFromTwoSpeeds(flown(250, far, 40)))).toEqual(['speed-does-not-fall-with-distance'])
  })

  it.each([
    { change: { near: feetPerSecond(9) }, input: 'near speed' },
    { change: { far: feetPerSecond(Number.NaN) }, input: 'far speed' },
    { change: { apart: metres(0.99) }, input: 'distance between the two speeds' },
    { change: { apart: metres(200.1) }, input: 'distance between the two speeds' },
    { change: { mass: grains(0) }, input: 'arrow weight' },
    { change: { diameter: millimetres(0) }, input: 'shaft diameter' },
    { change: { density: kilogramsPerCubicMetre(0.29) }, input: 'air density' },
  ])('names the $input when it is outside the model', ({ change, input }) => {
    expect(dragFromTwoSpeeds({ ...flown(250, 238, 60), ...change })).toMatchObject({ ok: false, findings: [{ input }] })
  })

  it('names the chronograph error', () => {
    expect(dragFromTwoSpeeds(flown(250, 238, 60), feetPerSecond(0))).toMatchObject({
      ok: false,
      findings: [{ input: 'chronograph error' }],
    })
  })
})
