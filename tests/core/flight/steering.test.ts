import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { broadheadAgainstFieldPoint } from '@/core/flight/broadhead-against-field-point'
import { type FinSet, finLift } from '@/core/flight/fin-lift'
import { type HeadShape, type Steered, WANTED_MARGIN, steering } from '@/core/flight/steering'
import { inInches, inUnit, inches, metres, millimetres, quantity, ratio } from '@/core/quantity'
import { answer } from '@tests/support/answer'

/** The worked fins of one diameter's scale: d 1, s 1, c_r 2, c_t 1, x_r 1, root 10 behind the nose, in centimetres. */
const NOSE = 0.2 // m ahead of the throat
const worked = (count: 3 | 4): FinSet => ({
  count,
  span: quantity(1, 'cm'),
  rootChord: quantity(2, 'cm'),
  tipChord: quantity(1, 'cm'),
  sweep: quantity(1, 'cm'),
  rootFront: metres(NOSE - 0.1),
})
const behindNose = (centre: number) => (NOSE - centre) * 100 // in diameters

const VANES: FinSet = {
  count: 4,
  span: inches(0.47),
  rootChord: inches(2.8),
  tipChord: inches(0.6),
  sweep: inches(1.9),
  rootFront: inches(4.3),
}
const FIELD_POINT: HeadShape = { coneLength: inches(0.7) }
const BROADHEAD: HeadShape = {
  coneLength: inches(1.2),
  blades: {
    count: 2,
    span: inches(0.45),
    rootChord: inches(1.9),
    tipChord: inches(0),
    sweep: inches(1.9),
    rootFront: inches(30.6),
  },
}
const arrow = (head: HeadShape, balance = 20.5, overall = 30.6): Steered => ({
  overall: inches(overall),
  diameter: millimetres(6.2),
  balance: inches(balance),
  vanes: VANES,
  head,
})

describe('finLift', () => {
  // [BARROWMAN] by hand, d 1, s 1, c_r 2, c_t 1, x_r 1, l √1.25, root at 10.
  it.each([
    { count: 3, slope: 7.119911 },
    { count: 4, slope: 9.493215 },
  ] as const)('is $slope for $count worked fins, at 10.833333 from the nose', ({ count, slope }) => {
    const lift = answer(finLift(worked(count), quantity(1, 'cm')))
    expect(Math.abs(lift.slope - slope)).toBeLessThanOrEqual(0.0000005)
    expect(Math.abs(behindNose(lift.centre) - 10.833333)).toBeLessThanOrEqual(0.0000005)
  })

  // [BARROWMAN] the whole: a cone of length 3 adds 2 at 2.
  it('makes the worked whole balance at 8.896180 from the nose', () => {
    const fins = answer(finLift(worked(3), quantity(1, 'cm')))
    const whole = (2 * 2 + fins.slope * behindNose(fins.centre)) / (2 + fins.slope)
    expect(Math.abs(whole - 8.89618)).toBeLessThanOrEqual(0.0000005)
  })

  it('does not depend on the scale, and grows with span and count', () => {
    const length = fc.double({ min: 0.3, max: 3, noNaN: true })
    fc.assert(
      fc.property(length, (size) => {
        const { span, rootChord, tipChord, sweep, rootFront } = worked(3)
        const larger: FinSet = {
          count: 3,
          span: metres(span * size),
          rootChord: metres(rootChord * size),
          tipChord: metres(tipChord * size),
          sweep: metres(sweep * size),
          rootFront,
        }
        const here = answer(finLift(worked(3), quantity(1, 'cm')))
        const there = answer(finLift(larger, quantity(size, 'cm')))
        return (
          Math.abs(there.slope / here.slope - 1) < 1e-12 &&
          Math.abs((rootFront - there.centre) / size / (rootFront - here.centre) - 1) < 1e-9
        )
      }),
    )
    const slope = (fins: FinSet) => answer(finLift(fins, quantity(1, 'cm'))).slope
    expect(slope({ ...worked(3), span: quantity(1.1, 'cm') })).toBeGreaterThan(slope(worked(3)))
    expect(slope(worked(4)) / slope(worked(3))).toBeCloseTo(4 / 3, 12)
  })

  it('stands at the middle quarter of an unswept fin', () => {
    const square = { ...worked(3), sweep: metres(0), tipChord: quantity(2, 'cm') }
    const lift = answer(finLift(square, quantity(1, 'cm')))
    expect(square.rootFront - lift.centre).toBeCloseTo(0.02 / 4, 12) // the quarter chord
  })

  it.each([
    { change: { span: metres(0) }, input: 'height of the fins' },
    { change: { span: metres(0.1001) }, input: 'height of the fins' },
    { change: { rootChord: metres(0) }, input: 'root length of the fins' },
    { change: { tipChord: metres(-0.001) }, input: 'tip length of the fins' },
    { change: { sweep: metres(0.301) }, input: 'sweep of the fins' },
    { change: { rootFront: metres(2.001) }, input: 'front of the fins' },
    { change: { rootFront: metres(Number.NaN) }, input: 'front of the fins' },
    { change: { count: 5 as 4 }, input: 'number of fins' },
  ])('names the $input when it is outside the model', ({ change, input }) => {
    expect(finLift({ ...worked(3), ...change }, quantity(1, 'cm'))).toMatchObject({ ok: false, findings: [{ input }] })
  })

  it('names the diameter', () => {
    expect(finLift(worked(3), metres(0))).toMatchObject({ ok: false, findings: [{ input: 'shaft diameter' }] })
  })
})

describe('steering', () => {
  it('gives a range of the centre of pressure over 1 to 5°, forward with the angle', () => {
    const { points, centre, least } = answer(steering(arrow(FIELD_POINT)))
    expect(points.map(({ angle }) => Math.round(inUnit(angle, '°')))).toEqual([1, 2, 3, 4, 5])
    points.slice(1).forEach((point, i) => {
      expect(point.centre).toBeGreaterThan(points[i]!.centre)
      expect(point.margin).toBeLessThan(points[i]!.margin)
    })
    expect([centre.min, centre.max]).toEqual([points[0]!.centre, points[4]!.centre])
    expect(least).toEqual(points[4])
    // centimetres within 3°, as slender bodies do
    expect(points[2]!.centre - points[0]!.centre).toBeGreaterThan(0.01)
    expect(points[2]!.centre - points[0]!.centre).toBeLessThan(0.15)
  })

  // The shaft's share by hand at 5°: 1.1·A_plan/A·sin²α at the middle of its side view.
  it('is the sum of its parts, by hand', () => {
    const d = 6.2e-3
    const overall = 30.6 * 0.0254
    const cone = 0.7 * 0.0254
    const a = (5 * Math.PI) / 180
    const vanes = answer(finLift(VANES, millimetres(6.2)))
    const tube = d * (overall - cone)
    const tip = (d * cone) / 2
    const middle = ((tube * (overall - cone)) / 2 + tip * (overall - cone + cone / 3)) / (tube + tip)
    const shaft = 1.1 * ((tube + tip) / ((Math.PI * d * d) / 4)) * Math.sin(a) ** 2
    const force = vanes.slope * a + 2 * a + shaft
    const centre = (vanes.slope * a * vanes.centre + 2 * a * (overall - (2 * cone) / 3) + shaft * middle) / force
    expect(answer(steering(arrow(FIELD_POINT))).points[4]!.centre).toBeCloseTo(centre, 12)
  })

  it('steers better with larger vanes and with the balance farther forward', () => {
    const margin = (of: Steered) => answer(steering(of)).least.margin
    const plain = margin(arrow(FIELD_POINT))
    expect(margin({ ...arrow(FIELD_POINT), vanes: { ...VANES, span: inches(0.55) } })).toBeGreaterThan(plain)
    expect(margin({ ...arrow(FIELD_POINT), vanes: { ...VANES, count: 3 } })).toBeLessThan(plain)
    expect(inInches(margin(arrow(FIELD_POINT, 21.5))) - inInches(plain)).toBeCloseTo(1, 9)
  })

  it('says when the margin is thin, and when the head outsteers the vanes', () => {
    const large: HeadShape = { ...BROADHEAD, blades: { ...BROADHEAD.blades!, span: inches(0.9), count: 4 } }
    expect(steering(arrow(BROADHEAD)).findings).toEqual([])
    expect(steering(arrow(BROADHEAD, 15)).findings).toMatchObject([{ code: 'steering-margin-thin' }])
    expect(steering(arrow(large)).findings).toMatchObject([{ code: 'head-outsteers-vanes' }])
    expect(WANTED_MARGIN).toBe(0.1)
    expect(steering(arrow(BROADHEAD), ratio(0.9)).findings).toMatchObject([
      { code: 'steering-margin-thin', wanted: 0.9 },
    ])
  })

  it.each([
    { of: arrow(FIELD_POINT, 20, 9.9), input: 'overall length' },
    { of: arrow(FIELD_POINT, 20, 60.1), input: 'overall length' },
    { of: arrow(FIELD_POINT, -0.1), input: 'balance point' },
    { of: { ...arrow(FIELD_POINT), diameter: metres(0) }, input: 'shaft diameter' },
    { of: arrow({ coneLength: millimetres(-1) }), input: 'length of the head’s cone' },
    { of: { ...arrow(FIELD_POINT), vanes: { ...VANES, span: metres(0) } }, input: 'height of the vanes' },
    {
      of: arrow({ ...BROADHEAD, blades: { ...BROADHEAD.blades!, span: metres(Number.NaN) } }),
      input: 'height of the blades',
    },
  ])('names the $input when it is outside the model', ({ of, input }) => {
    expect(steering(of)).toMatchObject({ ok: false, findings: [{ input }] })
  })

  it('names the wanted margin', () => {
    expect(steering(arrow(FIELD_POINT), ratio(1.1))).toMatchObject({
      ok: false,
      findings: [{ input: 'margin wanted' }],
    })
  })

  it('answers with finite numbers or with findings, whatever it is given', () => {
    const n = fc.oneof(fc.double(), fc.double({ min: 0, max: 1 }))
    fc.assert(
      fc.property(n, n, n, n, fc.tuple(n, n, n, n, n), (overall, d, balance, cone, [span, root, tip, sweep, front]) => {
        const fins: FinSet = {
          count: 3,
          span: metres(span / 10),
          rootChord: metres(root / 4),
          tipChord: metres(tip / 4),
          sweep: metres(sweep / 4),
          rootFront: metres(front),
        }
        const outcome = steering({
          overall: metres(overall),
          diameter: metres(d / 30),
          balance: metres(balance),
          vanes: fins,
          head: { coneLength: metres(cone / 7), blades: fins },
        })
        if (!outcome.ok) return outcome.findings.length > 0
        return outcome.value.points.every((point) => Object.values(point).every(Number.isFinite))
      }),
      { numRuns: 3000 },
    )
  })
})

describe('broadheadAgainstFieldPoint', () => {
  it('is the margin that the blades take', () => {
    const compared = answer(broadheadAgainstFieldPoint(arrow(BROADHEAD), arrow(FIELD_POINT)))
    expect(compared.lost).toBeCloseTo(compared.fieldPoint.least.margin - compared.broadhead.least.margin, 12)
    expect(compared.lost).toBeGreaterThan(0)
  })

  it('loses nothing to the same head', () => {
    const outcome = broadheadAgainstFieldPoint(arrow(FIELD_POINT), arrow(FIELD_POINT))
    expect(answer(outcome).lost).toBe(0)
    expect(outcome.findings).toEqual([])
  })

  it('says when the blades take more than a third', () => {
    const wide: HeadShape = { ...BROADHEAD, blades: { ...BROADHEAD.blades!, span: inches(0.6), count: 3 } }
    expect(broadheadAgainstFieldPoint(arrow(wide), arrow(FIELD_POINT)).findings[0]).toMatchObject({
      code: 'broadhead-takes-steering',
    })
  })

  it('answers what steering answers to a bad arrow of either kind', () => {
    const bad = arrow(FIELD_POINT, Number.NaN)
    expect(broadheadAgainstFieldPoint(bad, arrow(FIELD_POINT))).toMatchObject({ ok: false })
    expect(broadheadAgainstFieldPoint(arrow(BROADHEAD), bad)).toMatchObject({ ok: false })
  })
})
