import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalCdf } from '@/core/numeric/distributions/normal-cdf'
import { grains, gramsPerCubicCentimetre, inGrains } from '@/core/quantity'
import { neededTrim } from '@/core/trim/needed-trim'
import { nextPass, type TrimState } from '@/core/trim/next-pass'
import { passRemoval, PASSES, STEEL_PASSES } from '@/core/trim/pass-removal'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

const state = (remaining: number, change: Partial<TrimState> = {}): TrimState => ({
  remaining: { value: grains(remaining), sd: grains(0.1) },
  chamfer: grains(0.25),
  tolerance: grains(0.5),
  available: grains(40),
  ...change,
})
const next = (remaining: number, change: Partial<TrimState> = {}) =>
  answer(nextPass(state(remaining, change), STEEL_PASSES)).next

describe('neededTrim', () => {
  const at = (gr: number, sd = 0) => ({ value: grains(gr), sd: grains(sd) })

  it('is dry weight and glue to come less the target', () => {
    const { value, sd, low } = answer(neededTrim(at(831.4, 0.07), at(2, 0.4), grains(825)))
    expect(inGrains(value)).toBeCloseTo(8.4, 9)
    expect(inGrains(sd)).toBeCloseTo(Math.hypot(0.07, 0.4), 9)
    expect(value - low).toBeCloseTo(1.959_964 * sd, 12)
  })

  it('says by how much an arrow is light', () => {
    const outcome = neededTrim(at(822), at(2), grains(825))
    expect(inGrains(answer(outcome).value)).toBeCloseTo(-1, 9)
    expect(outcome.findings).toMatchObject([{ code: 'light-arrow', by: expect.closeTo(grains(1), 12) }])
  })

  it.each([
    ['dry weight', at(NaN), at(2), 825],
    ['uncertainty of the dry weight', at(1, -1), at(2), 825],
    ['expected glue', at(1), at(-2), 825],
    ['uncertainty of the glue', at(1), at(2, Infinity), 825],
    ['target', at(1), at(2), NaN],
  ])('names a %s it cannot take', (input, dry, glue, target) => {
    expect(neededTrim(dry, glue, grains(target))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('passRemoval', () => {
  // Common practice, no source: light 0.6 ± 0.2, usual 1.2 ± 0.35, heavy 3 ± 0.8 gr of steel; aluminium a third.
  it('is the usual removal on steel, and about a third on aluminium', () => {
    const steel = answer(passRemoval(gramsPerCubicCentimetre(8)))
    expect(
      PASSES.map((pass) => [inGrains(steel[pass].mean), inGrains(steel[pass].sd)].map((n) => +n.toFixed(9))),
    ).toEqual([
      [3, 0.8],
      [1.2, 0.35],
      [0.6, 0.2],
    ])
    const aluminium = answer(passRemoval(gramsPerCubicCentimetre(2.7)))
    expect(aluminium.usual.mean / steel.usual.mean).toBeCloseTo(1 / 3, 1)
  })

  it.each([0, NaN, 25.1])('gives nothing for a density of %d', (density) => {
    expect(passRemoval(gramsPerCubicCentimetre(density)).ok).toBe(false)
  })
})

describe('nextPass', () => {
  it('goes from heavy over usual and light to the edge and stops', () => {
    expect(next(12)).toBe('heavy')
    expect(next(4.5)).toBe('heavy')
    expect(next(2.5)).toBe('usual')
    expect(next(1)).toBe('light')
    expect(next(0.4)).toBe('chamfer')
    expect(next(0.1, { chamfer: grains(0) })).toBe('stop')
  })

  it('knows the chance that each pass is too much', () => {
    const { chanceTooLight, over } = answer(nextPass(state(2), STEEL_PASSES))
    expect(inGrains(over)).toBeCloseTo(1.75, 9)
    expect(chanceTooLight.usual).toBeCloseTo(normalCdf((1.2 - 1.75 - 0.5) / Math.hypot(0.1, 0.35)), 12)
    expect(chanceTooLight.heavy).toBeGreaterThan(chanceTooLight.usual)
    expect(chanceTooLight.usual).toBeGreaterThan(chanceTooLight.light)
  })

  it('says when the arrow stays heavy and no pass is fine enough', () => {
    const tight = { tolerance: grains(0.05), chamfer: grains(0) }
    const outcome = nextPass(state(0.35, tight), STEEL_PASSES)
    expect(answer(outcome).next).toBe('stop')
    expect(outcome.findings).toMatchObject([{ code: 'pass-too-coarse' }])
  })

  it('says when the arrow is light already, and still wants its edge broken', () => {
    const outcome = nextPass(state(-1), STEEL_PASSES)
    expect(answer(outcome).next).toBe('chamfer')
    expect(outcome.findings).toMatchObject([{ code: 'light-arrow', by: expect.closeTo(grains(1.25), 12) }])
  })

  it('says when the post cannot give what must come off, and takes no pass that is not there', () => {
    const outcome = nextPass(state(6, { available: grains(1.5) }), STEEL_PASSES)
    expect(answer(outcome).next).toBe('usual')
    expect(outcome.findings).toMatchObject([{ code: 'trim-into-bond', available: grains(1.5) }])
    expect(next(6, { available: grains(0.1) })).toBe('chamfer')
  })

  it('brings arrows down inside their tolerance and makes hardly one too light', () => {
    const normal = seededNormal(11)
    let light = 0
    let heavy = 0
    for (let arrow = 0; arrow < 500; arrow++) {
      let left = 6 + 3 * Math.abs(normal())
      for (let advice = next(left); PASSES.some((pass) => pass === advice); advice = next(left)) {
        const { mean, sd } = STEEL_PASSES[advice as (typeof PASSES)[number]]
        left -= inGrains(mean) + inGrains(sd) * normal()
      }
      left -= 0.25
      if (left < -0.5) light++
      if (left > 0.5) heavy++
    }
    expect(light / 500).toBeLessThan(0.05)
    expect(heavy / 500).toBeLessThan(0.05)
  })

  it('advises no pass that is more often too much than one time in twenty', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (left, sd) => {
          const given = state(left, { remaining: { value: grains(left), sd: grains(sd) } })
          const { next: advice, chanceTooLight } = answer(nextPass(given, STEEL_PASSES))
          if (advice !== 'chamfer' && advice !== 'stop') expect(chanceTooLight[advice]).toBeLessThanOrEqual(0.05)
          else expect(PASSES).not.toContain(advice)
        },
      ),
    )
  })

  it.each([
    ['weight still to trim', state(NaN), STEEL_PASSES],
    ['uncertainty of the weight to trim', state(1, { remaining: { value: grains(1), sd: grains(-1) } }), STEEL_PASSES],
    ['weight of the chamfer', state(1, { chamfer: grains(-1) }), STEEL_PASSES],
    ['tolerance', state(1, { tolerance: grains(Infinity) }), STEEL_PASSES],
    ['what the post can give', state(1, { available: grains(NaN) }), STEEL_PASSES],
    ['removal of a usual pass', state(1), { ...STEEL_PASSES, usual: { mean: grains(0), sd: grains(0.1) } }],
    ['spread of a light pass', state(1), { ...STEEL_PASSES, light: { mean: grains(1), sd: grains(0) } }],
  ])('names a %s it cannot take', (input, given, passes) => {
    expect(nextPass(given, passes)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
