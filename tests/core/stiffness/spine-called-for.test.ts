import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { outsideModel } from '@/core/finding'
import { bounds, known, noAnswer, type Outcome } from '@/core/outcome'
import type { Arrow } from '@/core/arrow/arrow'
import { grains, grainsPerInch, inches, inInches, type Length, poundsForce, ratio } from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { customaryShaft } from '@/core/stiffness/customary-shaft'
import { outlineArrow } from '@/core/stiffness/outline-arrow'
import { RELEASE_AID_BAND, reserveFindings } from '@/core/stiffness/reserve-band'
import { spineCalledFor } from '@/core/stiffness/spine-called-for'
import { rigidityFromSpine, SPINE_BOUNDS } from '@/core/stiffness/static-spine'
import { answer } from '@tests/support/answer'
import { CUSTOMARY_PICKS } from './customary-picks'
import { heavyArrow } from './sample-arrow'

const launch = (lbf: number) => ({ peakDraw: poundsForce(lbf), virtualMass: grains(50) })
/** The heavy arrow on another shaft of the same weight. */
const reshafted = (spine: Length): Outcome<Arrow> => {
  const rigidity = rigidityFromSpine(spine)
  return rigidity.ok
    ? { ...rigidity, value: { ...heavyArrow, shaft: { ...heavyArrow.shaft, rigidity: rigidity.value } } }
    : rigidity
}
const outlined =
  (frontGr: number) =>
  (spine: Length): Outcome<Arrow> => {
    const shaftWeightPerLength = customaryShaft(spine)
    if (!shaftWeightPerLength.ok) return shaftWeightPerLength
    return known(
      outlineArrow({
        length: inches(28),
        rigidity: answer(rigidityFromSpine(spine)),
        shaftWeightPerLength: shaftWeightPerLength.value,
        frontMass: grains(frontGr),
        rearMass: grains(40),
      }),
      shaftWeightPerLength.derivation,
    )
  }

describe('spineCalledFor', () => {
  it('gives both ends, each with the reserve at its end of the band', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 0.9, noNaN: true }),
        fc.double({ min: 1, max: 1.6, noNaN: true }),
        fc.double({ min: 30, max: 90, noNaN: true }),
        (low, high, lbf) => {
          const band = bounds(ratio(low), ratio(high))
          const { softest, stiffest } = answer(spineCalledFor({ launch: launch(lbf), band, arrowAt: reshafted }))
          expect(answer(columnReserve(answer(reshafted(softest)), launch(lbf)))).toBeCloseTo(low, 8)
          expect(answer(columnReserve(answer(reshafted(stiffest)), launch(lbf)))).toBeCloseTo(high, 8)
          expect(softest).toBeGreaterThan(stiffest)
        },
      ),
      { numRuns: 30 },
    )
  })

  it.each(CUSTOMARY_PICKS)('has the customary pick for $lbf lb and $frontGr gr in front within its range', (pick) => {
    // [CP] the picks; the default band is meant to hold them
    const { softest, stiffest } = answer(
      spineCalledFor({ launch: launch(pick.lbf), band: RELEASE_AID_BAND, arrowAt: outlined(pick.frontGr) }),
    )
    expect(inInches(stiffest) * 1000).toBeLessThan(pick.spine)
    expect(inInches(softest) * 1000).toBeGreaterThan(pick.spine)
  })

  it('asks for a stiffer shaft as draw weight or front weight grow', () => {
    const softestAt = (lbf: number, frontGr: number) =>
      answer(spineCalledFor({ launch: launch(lbf), band: RELEASE_AID_BAND, arrowAt: outlined(frontGr) })).softest
    expect(softestAt(80, 300)).toBeLessThan(softestAt(70, 300))
    expect(softestAt(70, 400)).toBeLessThan(softestAt(70, 300))
  })

  it('shows the band and both reserves it stands on', () => {
    const found = spineCalledFor({ launch: launch(72), band: RELEASE_AID_BAND, arrowAt: reshafted })
    expect(found.ok && found.derivation.steps?.map((step) => step.result[0]?.name)).toEqual([
      'column reserve',
      'column reserve',
    ])
  })

  it('stops a range that runs out of shafts and says which end', () => {
    const soft = spineCalledFor({ launch: launch(5), band: bounds(ratio(0.1), ratio(3)), arrowAt: outlined(100) })
    expect(soft).toMatchObject({ ok: true, value: { softest: SPINE_BOUNDS.max }, findings: [{ end: 'softest' }] })
    const stiff = spineCalledFor({ launch: launch(200), band: bounds(ratio(1), ratio(30)), arrowAt: outlined(100) })
    expect(stiff).toMatchObject({ ok: true, value: { stiffest: SPINE_BOUNDS.min }, findings: [{ end: 'stiffest' }] })
  })

  it('says so when no shaft is stiff enough, or none soft enough', () => {
    expect(
      spineCalledFor({ launch: launch(200), band: bounds(ratio(20), ratio(30)), arrowAt: outlined(800) }),
    ).toMatchObject({ ok: false, findings: [{ code: 'no-spine-stiff-enough', wanted: 20 }] })
    expect(
      spineCalledFor({ launch: launch(2), band: bounds(ratio(0.1), ratio(0.2)), arrowAt: outlined(100) }),
    ).toMatchObject({ ok: false, findings: [{ code: 'no-spine-soft-enough', wanted: 0.2 }] })
  })

  it.each([
    [1.3, 0.75],
    [0, 1],
    [-1, 1],
    [NaN, 1],
    [0.5, NaN],
    [0.5, Infinity],
    [1, 1],
  ])('takes no band from %d to %d', (low, high) => {
    expect(
      spineCalledFor({ launch: launch(70), band: bounds(ratio(low), ratio(high)), arrowAt: reshafted }),
    ).toMatchObject({ ok: false, findings: [{ code: 'band-reversed' }] })
  })

  it.each(['the stiffest made', 'the softest made', 'the softest called for', 'the stiffest called for'])(
    'hands on a refusal of the arrow at %s',
    (where) => {
      const question = { launch: launch(20), band: bounds(ratio(0.3), ratio(4)), arrowAt: reshafted }
      const { softest, stiffest } = answer(spineCalledFor(question))
      const at = {
        'the stiffest made': SPINE_BOUNDS.min,
        'the softest made': SPINE_BOUNDS.max,
        'the softest called for': softest,
        'the stiffest called for': stiffest,
      }[where]!
      const refused = noAnswer(outsideModel('wish', ratio(0), question.band, '1'))
      const arrowAt = (spine: Length) => (Math.abs(spine / at - 1) < 0.01 ? refused : reshafted(spine))
      expect(spineCalledFor({ ...question, arrowAt })).toBe(refused)
    },
  )
})

describe('customaryShaft', () => {
  it.each(CUSTOMARY_PICKS)('weighs the customary $gpi gr/in at $spine', ({ spine, gpi }) => {
    // [CP]
    expect(answer(customaryShaft(inches(spine / 1000)))).toBeCloseTo(grainsPerInch(gpi), 12)
  })

  it('grows heavier with stiffness, without a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0201, max: 2.9, noNaN: true }), (inch) => {
        const here = answer(customaryShaft(inches(inch)))
        const softer = answer(customaryShaft(inches(inch * 1.001)))
        expect(softer).toBeLessThan(here)
        expect(softer / here).toBeGreaterThan(0.998)
      }),
    )
  })

  it.each([0.0199, 3.01, NaN, 0, Infinity])('knows no shaft of %d in', (inch) => {
    expect(customaryShaft(inches(inch))).toMatchObject({ ok: false, findings: [{ input: 'static spine' }] })
  })
})

describe('reserveFindings', () => {
  it('is silent within the band and names the side outside it', () => {
    expect(reserveFindings(ratio(0.75), RELEASE_AID_BAND)).toEqual([])
    expect(reserveFindings(ratio(1.3), RELEASE_AID_BAND)).toEqual([])
    expect(reserveFindings(ratio(0.749), RELEASE_AID_BAND)).toMatchObject([{ code: 'reserve-below-band' }])
    expect(reserveFindings(ratio(1.301), RELEASE_AID_BAND)).toMatchObject([{ code: 'reserve-above-band' }])
  })
})
