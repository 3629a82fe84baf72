import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inches, inInches, inPoundsForce, poundsForce } from '@/core/quantity'
import { spineFromWoodSpine, WOOD_SPINE_BOUNDS, woodSpineFromSpine } from '@/core/stiffness/wood-spine'
import { SPINE_BOUNDS } from '@/core/stiffness/static-spine'
import { answer } from '@tests/support/answer'

describe('woodSpineFromSpine', () => {
  it.each([
    // [RHEINGANS] pounds = 26 over the deflection under 2 lb on 26 in; [F2031] for the other deflection
    { inch: 1, printed: 31.4992, half: 0.00005 },
    { inch: 0.4, printed: 78.75, half: 0.005 },
  ])('is $printed lb for a static spine of $inch in', ({ inch, printed, half }) => {
    expect(Math.abs(inPoundsForce(answer(woodSpineFromSpine(inches(inch)))) - printed)).toBeLessThanOrEqual(half)
  })

  it('is turned round by spineFromWoodSpine', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.021, max: 2.99, noNaN: true }), (inch) => {
        expect(inInches(answer(spineFromWoodSpine(answer(woodSpineFromSpine(inches(inch)))))) / inch).toBeCloseTo(1, 12)
      }),
    )
  })

  it.each([0.0199, 3.0001, 0, NaN, Infinity])('gives no pounds for a spine of %d in', (inch) => {
    expect(woodSpineFromSpine(inches(inch))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input: 'static spine', bounds: SPINE_BOUNDS }],
    })
  })

  it.each([10.4, 1575.1, 0, -60, NaN, Infinity])('gives no spine for %d lb', (pounds) => {
    expect(spineFromWoodSpine(poundsForce(pounds))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input: 'wood spine', bounds: WOOD_SPINE_BOUNDS }],
    })
  })
})
