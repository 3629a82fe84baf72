import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bowSpeed } from '@/core/bow/bow-speed'
import { RECOVERED, forceDrawEnergy } from '@/core/bow/force-draw-energy'
import type { KnownBow } from '@/core/bow/known-bow'
import { VIRTUAL_MASS_PRIOR } from '@/core/bow/virtual-mass-prior'
import { feetPerSecond, grains, inFeetPerSecond, inFootPounds, inGrains, inches, poundsForce } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const reading = (gr: number, fps: number) => ({ mass: grains(gr), speed: feetPerSecond(fps) })
const ramp = (lb: number) =>
  [0, 0.25, 0.5, 0.75, 1].map((x) => ({ draw: inches(7 + 21 * x), force: poundsForce(lb * x) }))
const codes = (outcome: { readonly findings: readonly { readonly code: string }[] }) =>
  outcome.findings.map(({ code }) => code)

const TWO = [reading(452, 268), reading(601, 236.5)]
const RATED: KnownBow = {
  kind: 'compound',
  ratedSpeed: feetPerSecond(335),
  peakDrawWeight: poundsForce(72),
  drawLength: inches(28.5),
  braceHeight: inches(6.75),
}

describe('bowSpeed', () => {
  it.each([
    { bow: { ...RATED, chronograph: TWO, forceDraw: ramp(60) }, provenance: 'chronograph' },
    { bow: { ...RATED, chronograph: TWO.slice(0, 1), forceDraw: ramp(60) }, provenance: 'one weight' },
    { bow: { ...RATED, chronograph: [], forceDraw: ramp(60) }, provenance: 'force-draw curve' },
    { bow: { ...RATED, forceDraw: [] }, provenance: 'rating' },
  ] as const)('trusts the $provenance first among what is known', ({ bow, provenance }) => {
    const outcome = bowSpeed(grains(500), bow)
    expect(answer(outcome).provenance).toBe(provenance)
    expect(codes(outcome)).not.toContain('less-trusted-source')
  })

  // Two-point line by hand: 1/v² at 825 gr = 2.382432e-5 s²/ft², E 72.11 ft·lbf, m_v 72.4 gr.
  it('gives the speed, the energy and the virtual mass of two readings', () => {
    const { speed, energy, virtualMass } = answer(bowSpeed(grains(825), { kind: 'compound', chronograph: TWO }))
    const slope = (236.5 ** -2 - 268 ** -2) / (601 - 452)
    expect(inFeetPerSecond(speed.value)).toBeCloseTo((268 ** -2 + slope * (825 - 452)) ** -0.5, 9)
    expect(inFootPounds(energy.value)).toBeCloseTo(1 / slope / 450_436.68, 4)
    expect(inGrains(virtualMass.value)).toBeCloseTo(268 ** -2 / slope - 452, 8)
  })

  it('puts a speed beyond the weights measured among its findings', () => {
    expect(codes(bowSpeed(grains(825), { kind: 'compound', chronograph: TWO }))).toEqual(['extrapolated'])
    expect(codes(bowSpeed(grains(500), { kind: 'compound', chronograph: TWO }))).toEqual([])
    expect(codes(bowSpeed(grains(452), { kind: 'compound', chronograph: TWO }))).toEqual([])
  })

  it('has a wider band the less it stands on', () => {
    const sd = (bow: KnownBow) => answer(bowSpeed(grains(825), bow)).speed.sd
    const fitted = sd({ ...RATED, chronograph: TWO })
    const single = sd({ ...RATED, chronograph: TWO.slice(0, 1) })
    expect(single).toBeGreaterThan(fitted)
    expect(sd(RATED)).toBeGreaterThan(single)
  })

  it('falls back from readings that contradict each other, and says so', () => {
    const outcome = bowSpeed(grains(650), { ...RATED, chronograph: [reading(450, 250), reading(600, 260)] })
    expect(answer(outcome).provenance).toBe('rating')
    expect(codes(outcome)).toEqual(['less-trusted-source', 'speed-does-not-fall-with-weight'])
    expect(outcome.findings[0]).toMatchObject({ used: 'rating', instead: ['chronograph'] })
  })

  it.each([
    { chronograph: [reading(452, 267), reading(452, 269)], why: 'equal-weights' },
    { chronograph: [reading(450, 268), reading(454, 268)], why: 'weights-too-close' },
  ])('takes readings of one weight with a believed virtual mass: $why', ({ chronograph, why }) => {
    const outcome = bowSpeed(grains(452), { ...RATED, chronograph })
    expect(answer(outcome).provenance).toBe('one weight')
    expect(codes(outcome).slice(0, 2)).toEqual(['less-trusted-source', why])
    expect(inFeetPerSecond(answer(outcome).speed.value)).toBeCloseTo(268, 0)
  })

  it('takes a virtual mass known from elsewhere in the place of the typical one', () => {
    const one = { kind: 'compound', chronograph: TWO.slice(0, 1) } as const
    const own = answer(bowSpeed(grains(825), { ...one, virtualMass: { value: grains(60) } }))
    expect(inGrains(own.virtualMass.value)).toBeCloseTo(60, 12)
    expect(own.virtualMass.sd).toBe(VIRTUAL_MASS_PRIOR.compound.sd)
    const sure = answer(bowSpeed(grains(825), { ...one, virtualMass: { value: grains(60), sd: grains(5) } }))
    expect(inGrains(sure.virtualMass.sd)).toBeCloseTo(5, 12)
    expect(inGrains(answer(bowSpeed(grains(825), one)).virtualMass.value)).toBeCloseTo(80, 12)
  })

  it('marks what it assumed in its working', () => {
    const origin = (bow: KnownBow, name: string) => {
      const outcome = bowSpeed(grains(600), bow)
      return outcome.ok && outcome.derivation.steps?.[0]?.inputs.find((input) => input.name === name)?.origin
    }
    const { braceHeight: _, ...unbraced } = RATED
    expect(origin(unbraced, 'brace height')).toBe('assumed')
    expect(origin(RATED, 'brace height')).toBe('given')
    expect(origin(RATED, 'virtual mass')).toBe('assumed')
    expect(origin({ ...RATED, virtualMass: { value: grains(60) } }, 'virtual mass')).toBe('given')
  })

  it('counts a chronograph as good as it is said to be', () => {
    const sd = (fps: number) =>
      answer(bowSpeed(grains(452), { kind: 'compound', chronograph: TWO, chronographSd: feetPerSecond(fps) })).speed.sd
    expect(sd(3) / sd(1)).toBeCloseTo(3, 6)
  })

  it.each([
    { bow: { kind: 'compound', ratedSpeed: feetPerSecond(335) }, missing: ['peak draw weight', 'draw length'] },
    {
      bow: { kind: 'compound', ratedSpeed: feetPerSecond(335), drawLength: inches(29) },
      missing: ['peak draw weight'],
    },
    {
      bow: { kind: 'compound', ratedSpeed: feetPerSecond(335), peakDrawWeight: poundsForce(70) },
      missing: ['draw length'],
    },
  ] as const)('names what a rating still needs: $missing', ({ bow, missing }) => {
    expect(bowSpeed(grains(600), bow)).toMatchObject({ ok: false, findings: [{ code: 'rating-needs', missing }] })
  })

  it('says that nothing is known when nothing is', () => {
    expect(bowSpeed(grains(600), { kind: 'longbow' })).toEqual({ ok: false, findings: [{ code: 'speed-not-known' }] })
  })

  it('takes the conditions of the rating where they are told', () => {
    const ratingConditions = { peakDrawWeight: poundsForce(72), drawLength: inches(28.5), arrowMass: grains(400) }
    const speed = answer(bowSpeed(grains(400), { ...RATED, ratingConditions })).speed
    expect(inFeetPerSecond(speed.value)).toBeCloseTo(335, 9)
  })

  it('refuses an arrow without weight', () => {
    expect(bowSpeed(grains(0), RATED)).toMatchObject({ ok: false, findings: [{ input: 'arrow weight' }] })
  })

  it('gives every source’s complaint when none answers', () => {
    const bow: KnownBow = { kind: 'compound', chronograph: [reading(0, 250)], forceDraw: ramp(60).slice(0, 2) }
    expect(codes(bowSpeed(grains(600), bow))).toEqual(['outside-model', 'too-few-points'])
  })

  it('answers with finite numbers or with findings, whatever it is given', () => {
    const number = fc.oneof(fc.double(), fc.double({ min: 1, max: 700 }))
    const maybe = fc.option(number, { nil: undefined })
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number, number), { maxLength: 3 }),
        fc.array(fc.tuple(number, number), { maxLength: 4 }),
        fc.tuple(maybe, maybe, maybe, maybe),
        number,
        (shots, curve, [rated, peak, draw, brace], gr) => {
          const outcome = bowSpeed(grains(gr), {
            kind: 'recurve',
            chronograph: shots.map(([m, v]) => reading(m, v)),
            forceDraw: curve.map(([d, f]) => ({ draw: inches(d), force: poundsForce(f) })),
            ...(rated === undefined ? {} : { ratedSpeed: feetPerSecond(rated) }),
            ...(peak === undefined ? {} : { peakDrawWeight: poundsForce(peak) }),
            ...(draw === undefined ? {} : { drawLength: inches(draw) }),
            ...(brace === undefined ? {} : { braceHeight: inches(brace) }),
          })
          if (!outcome.ok) return outcome.findings.length > 0
          const { speed, energy, virtualMass, correlation } = outcome.value
          return [...Object.values(speed), ...Object.values(energy), ...Object.values(virtualMass), correlation].every(
            Number.isFinite,
          )
        },
      ),
      { numRuns: 3000 },
    )
  })
})

describe('forceDrawEnergy', () => {
  const prior = VIRTUAL_MASS_PRIOR.recurve

  // [LIMBS] 40.603 J come back out of 42.97 J stored.
  it('is the stored energy times the recovered share of the measured recurve', () => {
    expect(RECOVERED.share).toBeCloseTo(0.9449, 4)
    const bow = answer(forceDrawEnergy(ramp(60), [], prior))
    expect(inFootPounds(bow.energy.value)).toBeCloseTo(((60 * 21) / 24) * RECOVERED.share, 9)
    expect(bow.energy.sd / bow.energy.value).toBeGreaterThan(0.04)
  })

  it('is what the let-down curve gives back where there is one', () => {
    expect(inFootPounds(answer(forceDrawEnergy(ramp(60), ramp(54), prior)).energy.value)).toBeCloseTo((54 * 21) / 24, 9)
  })

  it.each([
    { belief: { value: grains(-1), sd: grains(1) }, input: 'virtual mass' },
    { belief: { value: grains(80), sd: grains(-1) }, input: 'error of the virtual mass' },
  ])('names the $input', ({ belief, input }) => {
    expect(forceDrawEnergy(ramp(60), [], belief)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
