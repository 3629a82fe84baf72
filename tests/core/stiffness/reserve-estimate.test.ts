import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { grains, inches, poundsForce, ratio, scaled } from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { criticalForce, finishedMass } from '@/core/stiffness/critical-force'
import { lengthened } from '@/core/stiffness/lengthened'
import { reserveEstimate, type ReserveInputs } from '@/core/stiffness/reserve-estimate'
import { answer } from '@tests/support/answer'
import { heavyArrow } from './sample-arrow'

const sure: ReserveInputs = {
  arrow: heavyArrow,
  peakDraw: { value: poundsForce(72), sd: poundsForce(0) },
  virtualMass: { value: grains(60), sd: grains(0) },
  spineSd: ratio(0),
  lengthSd: inches(0),
}
const unsure: ReserveInputs = {
  ...sure,
  peakDraw: { value: poundsForce(72), sd: poundsForce(1) },
  virtualMass: { value: grains(60), sd: grains(15) },
  spineSd: ratio(0.02),
  lengthSd: inches(0.05),
}

describe('reserveEstimate', () => {
  it('is the reserve alone when all is known', () => {
    const { value, sd, low, high } = answer(reserveEstimate(sure))
    expect(value).toBe(answer(columnReserve(heavyArrow, { peakDraw: poundsForce(72), virtualMass: grains(60) })))
    expect([sd, low, high]).toEqual([0, value, value])
  })

  it('has the slope of the closed form for the draw weight: R/F', () => {
    const { value, sd } = answer(reserveEstimate({ ...sure, peakDraw: unsure.peakDraw }))
    expect(sd / (value / 72)).toBeCloseTo(1, 3)
  })

  // The last two are what chronograph readings near in weight leave of it.
  it.each([15, 37, 90])('has the slope of the closed form for a virtual mass of 60 ± %d gr: F_cr/(F_peak·m)', (gr) => {
    const { sd } = answer(reserveEstimate({ ...sure, virtualMass: { value: grains(60), sd: grains(gr) } }))
    const slope = answer(criticalForce(heavyArrow)) / (sure.peakDraw.value * finishedMass(heavyArrow))
    expect(sd / (slope * grains(gr))).toBeCloseTo(1, 9)
  })

  it('has a share of the reserve for a share of the spine where nothing is bonded', () => {
    const arrow = {
      ...heavyArrow,
      pieces: heavyArrow.pieces.map(({ name, mass, from, to }) => ({ name, mass, from, to })),
    }
    const { value, sd } = answer(reserveEstimate({ ...sure, arrow, spineSd: ratio(0.02) }))
    expect(sd / value).toBeCloseTo(0.02, 4)
  })

  it('adds what is independent in quadrature, and spans 95 percent', () => {
    const alone = [
      { ...sure, peakDraw: unsure.peakDraw },
      { ...sure, virtualMass: unsure.virtualMass },
      { ...sure, spineSd: unsure.spineSd },
      { ...sure, lengthSd: unsure.lengthSd },
    ].map((inputs) => answer(reserveEstimate(inputs)).sd)
    const { value, sd, low, high } = answer(reserveEstimate(unsure))
    expect(alone.every((each) => each > 0)).toBe(true)
    expect(sd).toBeCloseTo(Math.hypot(...alone), 12)
    // Normal distribution, two-sided 95 % [AS64] table 26.1: 1.96
    expect((high - value) / sd).toBeCloseTo(1.959_964, 5)
    expect((value - low) / sd).toBeCloseTo(1.959_964, 5)
  })

  it('agrees with a seeded sampling of the inputs', { timeout: 60_000 }, () => {
    const random = seeded(7)
    const reserves = Array.from({ length: 1500 }, () => {
      const shaft = { ...heavyArrow.shaft, rigidity: scaled(heavyArrow.shaft.rigidity, 1 / (1 + 0.02 * random())) }
      return answer(
        columnReserve(lengthened({ ...heavyArrow, shaft }, inches(0.05 * random())), {
          peakDraw: poundsForce(72 + random()),
          virtualMass: grains(60 + 15 * random()),
        }),
      )
    })
    const mean = reserves.reduce<number>((a, b) => a + b, 0) / reserves.length
    const sd = Math.sqrt(reserves.reduce<number>((s, r) => s + (r - mean) ** 2, 0) / (reserves.length - 1))
    const estimate = answer(reserveEstimate(unsure))
    expect(Math.abs(mean / estimate.value - 1)).toBeLessThan(0.004)
    expect(Math.abs(sd / estimate.sd - 1)).toBeLessThan(0.08) // 1,500 draws: 1.8 % of an s.d., one s.d.
  })

  it('widens as any input becomes less sure', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 3, noNaN: true }), (factor) => {
        const before = answer(reserveEstimate(unsure)).sd
        const wider: ReserveInputs[] = [
          { ...unsure, peakDraw: { ...unsure.peakDraw, sd: scaled(unsure.peakDraw.sd, factor) } },
          { ...unsure, spineSd: scaled(unsure.spineSd, factor) },
          { ...unsure, lengthSd: scaled(unsure.lengthSd, factor) },
        ]
        for (const inputs of wider) expect(answer(reserveEstimate(inputs)).sd).toBeGreaterThan(before)
      }),
      { numRuns: 10 },
    )
  })

  it.each<[string, Partial<ReserveInputs>, string]>([
    [
      'a negative s.d. of draw',
      { peakDraw: { value: poundsForce(72), sd: poundsForce(-1) } },
      's.d. of peak draw weight',
    ],
    [
      'half the draw unsure',
      { peakDraw: { value: poundsForce(72), sd: poundsForce(36.1) } },
      's.d. of peak draw weight',
    ],
    ['no s.d. of draw', { peakDraw: { value: poundsForce(72), sd: poundsForce(NaN) } }, 's.d. of peak draw weight'],
    ['a negative s.d. of virtual mass', { virtualMass: { value: grains(60), sd: grains(-1) } }, 's.d. of virtual mass'],
    [
      'a virtual mass known to no better than two thousand grains',
      { virtualMass: { value: grains(60), sd: grains(2001) } },
      's.d. of virtual mass',
    ],
    [
      'a virtual mass within two s.d. of too much',
      { virtualMass: { value: grains(60), sd: grains(971) } },
      'virtual mass',
    ],
    ['half the spine unsure', { spineSd: ratio(0.501) }, 's.d. of static spine'],
    ['a negative s.d. of spine', { spineSd: ratio(-0.01) }, 's.d. of static spine'],
    ['an inch of cut unsure', { lengthSd: inches(1.01) }, 's.d. of cut length'],
    ['no s.d. of cut', { lengthSd: inches(NaN) }, 's.d. of cut length'],
    ['a draw weight that is none', { peakDraw: { value: poundsForce(0), sd: poundsForce(0) } }, 'peak draw weight'],
    [
      'a draw within an s.d. of too much',
      { peakDraw: { value: poundsForce(290), sd: poundsForce(20) } },
      'peak draw weight',
    ],
    [
      'a draw within an s.d. of too little',
      { peakDraw: { value: poundsForce(1.2), sd: poundsForce(0.5) } },
      'peak draw weight',
    ],
  ])('gives no band for %s', (_, changed, input) => {
    expect(reserveEstimate({ ...unsure, ...changed })).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

/** Normal deviates from a seed: a 32-bit linear congruential generator (Numerical Recipes' constants, from memory), Box and Muller. */
function seeded(seed: number): () => number {
  let state = seed
  const uniform = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return (state + 0.5) / 2 ** 32
  }
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
}
