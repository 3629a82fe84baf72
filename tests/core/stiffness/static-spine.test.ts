import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inches, inInches, inUnit, newtonSquareMetres } from '@/core/quantity'
import { RIGIDITY_BOUNDS, rigidityFromSpine, SPINE_BOUNDS, spineFromRigidity } from '@/core/stiffness/static-spine'
import { answer } from '@tests/support/answer'

describe('rigidityFromSpine', () => {
  it.each([
    // [F2031] load and span with P·S³/(48·δ), worked by hand: 1.94·28³/48 = 887.2267
    { inch: 0.3, printed: 8.4873, half: 0.00005 },
    { inch: 0.4, printed: 6.3654, half: 0.00005 },
    { inch: 1, printed: 2.546176, half: 0.0000005 },
  ])('is $printed N·m² for a spine of $inch in', ({ inch, printed, half }) => {
    expect(Math.abs(answer(rigidityFromSpine(inches(inch))) - printed)).toBeLessThanOrEqual(half)
  })

  it('is 887.2267/δ in lbf·in²', () => {
    // [F2031], as above
    expect(Math.abs(inUnit(answer(rigidityFromSpine(inches(1))), 'lbf·in²') - 887.2267)).toBeLessThanOrEqual(0.00005)
  })

  it('is turned round by spineFromRigidity', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.021, max: 2.99, noNaN: true }), (inch) => {
        const back = answer(spineFromRigidity(answer(rigidityFromSpine(inches(inch)))))
        expect(inInches(back) / inch).toBeCloseTo(1, 12)
      }),
    )
  })

  it.each([0.0199, 3.0001, 0, -0.3, NaN, Infinity])('gives no rigidity for a spine of %d in', (inch) => {
    expect(rigidityFromSpine(inches(inch))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input: 'static spine', bounds: SPINE_BOUNDS, unit: 'in' }],
    })
  })

  it.each([0.84, 127.4, 0, -8, NaN, Infinity])('gives no spine for %d N·m²', (rigidity) => {
    expect(spineFromRigidity(newtonSquareMetres(rigidity))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input: 'flexural rigidity', bounds: RIGIDITY_BOUNDS }],
    })
  })
})
