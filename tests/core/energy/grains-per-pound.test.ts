import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DRAW_WEIGHT_BOUNDS, grainsPerPound } from '@/core/energy/grains-per-pound'
import { grains, inUnit, poundsForce } from '@/core/quantity'
import { answer } from '@tests/support/answer'

describe('grainsPerPound', () => {
  // [F1544]: the rating arrow, 350 gr for 70 lb, is 5 gr per lb. Others by division.
  it.each([
    { gr: 350, lb: 70, gpp: 5 },
    { gr: 825, lb: 72, gpp: 825 / 72 },
  ])('is $gpp for $gr gr and $lb lb', ({ gr, lb, gpp }) => {
    expect(inUnit(answer(grainsPerPound(grains(gr), poundsForce(lb))), 'gr/lb')).toBeCloseTo(gpp, 10)
  })

  // [FLOOR-GPP] 5 from memory; [WSR00-06-090] 6.
  it.each([
    { gr: 349.9, severity: 'below-floor' },
    { gr: 350, severity: 'below-advised' },
    { gr: 419.9, severity: 'below-advised' },
  ])('warns $severity at $gr gr on 70 lb', ({ gr, severity }) => {
    expect(grainsPerPound(grains(gr), poundsForce(70)).findings).toMatchObject([
      { code: 'arrow-light-for-bow', severity },
    ])
  })

  it('is quiet from 6 grains per pound, whatever the draw weight', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 120, noNaN: true }), (lb) => {
        const findings = (gpp: number) => grainsPerPound(grains(gpp * lb), poundsForce(lb)).findings
        return findings(6).length === 0 && findings(5.999).length === 1
      }),
    )
  })

  it.each([0, -70, 0.99, 301, Number.NaN, Number.POSITIVE_INFINITY])('gives nothing for %d lb', (lb) => {
    expect(grainsPerPound(grains(650), poundsForce(lb))).toMatchObject({
      ok: false,
      findings: [{ input: 'peak draw weight', bounds: DRAW_WEIGHT_BOUNDS }],
    })
  })

  it('gives nothing for an arrow without weight', () => {
    expect(grainsPerPound(grains(0), poundsForce(70))).toMatchObject({
      ok: false,
      findings: [{ input: 'finished weight' }],
    })
  })
})
