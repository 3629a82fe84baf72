import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  grains,
  gramsPerCubicCentimetre,
  inGrains,
  inMillimetres,
  inUnit,
  kilogramsPerMetre,
  millimetres,
} from '@/core/quantity'
import { chamferWeight } from '@/core/trim/chamfer-weight'
import { gapGlue } from '@/core/trim/gap-glue'
import { CURED_EPOXY, MATERIALS } from '@/core/trim/materials'
import { planTrim } from '@/core/trim/plan-trim'
import type { Post, PostSection } from '@/core/trim/post'
import { postAvailable } from '@/core/trim/post-available'
import { trimLength } from '@/core/trim/trim-length'
import { weightPerLength } from '@/core/trim/weight-per-length'
import { answer } from '@tests/support/answer'

const section = (change: Partial<PostSection> = {}): PostSection => ({
  name: 'post',
  length: millimetres(40),
  outerDiameter: millimetres(5.2),
  bore: millimetres(0),
  density: gramsPerCubicCentimetre(8),
  bonded: true,
  ...change,
})
const post = (leastBondMm = 25, ...sections: readonly PostSection[]): Post => ({
  sections: sections.length === 0 ? [section()] : sections,
  leastBond: millimetres(leastBondMm),
})

describe('weightPerLength', () => {
  // Post ⌀5.2 mm, ρ 8.00 g/cm³: 2.62192 gr/mm (C).
  it('has the worked example', () => {
    const perLength = answer(weightPerLength(section()))
    expect(Math.abs(inUnit(perLength, 'gr/mm') - 2.62192)).toBeLessThanOrEqual(5e-6)
    expect(perLength).toBe(kilogramsPerMetre(perLength))
  })

  it.each([
    ['length of post', { length: millimetres(NaN) }],
    ['outer diameter of post', { outerDiameter: millimetres(40.1) }],
    ['bore of post', { bore: millimetres(-1) }],
    ['density of post', { density: gramsPerCubicCentimetre(Infinity) }],
  ])('names a %s it cannot take', (input, change) => {
    expect(weightPerLength(section(change))).toMatchObject({ ok: false, findings: [{ input }] })
  })

  it('names a bore as wide as the post', () => {
    expect(weightPerLength(section({ bore: millimetres(5.2) }))).toMatchObject({
      ok: false,
      findings: [{ code: 'bore-wider-than-tube', part: 'post' }],
    })
  })
})

describe('trimLength', () => {
  // 12.5 gr = 4.7675 mm solid, 5.5952 mm with a ⌀2.0 mm bore (C).
  it.each([
    { bore: 0, mm: 4.7675 },
    { bore: 2, mm: 5.5952 },
  ])('takes 12.5 gr off a post of bore $bore mm in $mm mm', ({ bore, mm }) => {
    const bored = post(25, section({ bore: millimetres(bore) }))
    const { length, bondLeft, postLeft } = answer(trimLength(grains(12.5), bored))
    expect(Math.abs(inMillimetres(length) - mm)).toBeLessThanOrEqual(5e-5)
    expect(inMillimetres(bondLeft)).toBeCloseTo(40 - inMillimetres(length), 9)
    expect(postLeft).toBe(bondLeft)
  })

  it('goes through a stacked weight first, which costs no bond', () => {
    const weight = section({
      name: 'rear weight',
      length: millimetres(10),
      outerDiameter: millimetres(5),
      bonded: false,
    })
    const stacked = post(25, weight, section())
    const perMm = inUnit(answer(weightPerLength(weight)), 'gr/mm')
    const { length, bondLeft, postLeft } = answer(trimLength(grains(10 * perMm + 2.62192), stacked))
    expect(inMillimetres(length)).toBeCloseTo(11, 5)
    expect(inMillimetres(bondLeft)).toBeCloseTo(39, 5)
    expect(inMillimetres(postLeft)).toBeCloseTo(39, 5)
    const half = answer(trimLength(grains(5 * perMm), stacked))
    expect(inMillimetres(half.bondLeft)).toBeCloseTo(40, 9)
    expect(inMillimetres(half.postLeft)).toBeCloseTo(45, 6)
  })

  it('refuses to trim into the bond that must stay, just beyond and not just within', () => {
    const { weight, length } = postAvailable(post())
    expect(inMillimetres(length)).toBeCloseTo(15, 9)
    expect(trimLength(grains(inGrains(weight) - 1e-6), post()).ok).toBe(true)
    expect(trimLength(grains(inGrains(weight) + 1e-6), post())).toMatchObject({
      ok: false,
      findings: [{ code: 'trim-into-bond', leastBond: millimetres(25) }],
    })
  })

  it('takes nothing off a bond that is too short already', () => {
    expect(postAvailable(post(60))).toEqual({ length: 0, weight: 0 })
    expect(trimLength(grains(1), post(60)).ok).toBe(false)
  })

  it('gives all of a post whose bond need not stay', () => {
    expect(inMillimetres(postAvailable(post(0)).length)).toBeCloseTo(40, 9)
    expect(postAvailable({ sections: [], leastBond: millimetres(0) })).toEqual({ length: 0, weight: 0 })
    const two = post(10, section({ length: millimetres(15) }), section({ length: millimetres(20) }))
    expect(inMillimetres(postAvailable(two).length)).toBeCloseTo(25, 9)
  })

  it('is undone by weighing the length, and grows with the weight', () => {
    const gr = fc.double({ min: 0, max: 39, noNaN: true })
    const perMm = inUnit(answer(weightPerLength(section())), 'gr/mm')
    fc.assert(
      fc.property(gr, gr, (a, b) => {
        const mm = (w: number) => inMillimetres(answer(trimLength(grains(w), post())).length)
        expect(mm(a) * perMm).toBeCloseTo(a, 8)
        expect(mm(Math.max(a, b))).toBeGreaterThanOrEqual(mm(Math.min(a, b)))
      }),
    )
  })

  it.each([-0.1, NaN, Infinity])('gives nothing for %d gr', (gr) => {
    expect(trimLength(grains(gr), post())).toMatchObject({ ok: false, findings: [{ input: 'weight to trim' }] })
  })

  it('names a bond that is no length', () => {
    expect(trimLength(grains(1), post(NaN))).toMatchObject({ ok: false, findings: [{ input: 'bond that must stay' }] })
  })
})

describe('chamferWeight', () => {
  const wide = section({ outerDiameter: millimetres(6.2) })

  // 0.5 mm on ⌀6.2 mm → 0.2844 gr (C).
  it('has the worked example', () => {
    expect(Math.abs(inGrains(answer(chamferWeight(millimetres(0.5), wide))) - 0.2844)).toBeLessThanOrEqual(5e-5)
  })

  // By a sum over thin rings instead of Pappus: at depth x the ring runs from D/2 − (c − x) to D/2.
  it('agrees with a sum of thin rings', () => {
    let volume = 0 // mm³
    for (let i = 0; i < 20_000; i++) {
      const left = 0.8 * (1 - (i + 0.5) / 20_000)
      volume += Math.PI * (3.1 ** 2 - (3.1 - left) ** 2) * (0.8 / 20_000)
    }
    expect(inGrains(answer(chamferWeight(millimetres(0.8), wide)))).toBeCloseTo((volume * 8) / 64.798_91, 6)
  })

  it('is nothing for no chamfer, and not more than the wall', () => {
    expect(answer(chamferWeight(millimetres(0), wide))).toBe(0)
    const thin = section({ outerDiameter: millimetres(6), bore: millimetres(5) })
    expect(chamferWeight(millimetres(0.499), thin).ok).toBe(true)
    expect(chamferWeight(millimetres(0.501), thin)).toMatchObject({ ok: false, findings: [{ input: 'chamfer' }] })
  })

  it.each([-0.1, 5.01, NaN, Infinity])('gives nothing for %d mm', (mm) => {
    expect(chamferWeight(millimetres(mm), wide)).toMatchObject({ ok: false, findings: [{ input: 'chamfer' }] })
  })
})

describe('planTrim', () => {
  it('takes the edge’s share off what is ground, and comes out at what was needed', () => {
    const { byLength, byChamfer, length } = answer(planTrim(grains(8), post(), millimetres(0.5)))
    expect(inGrains(byLength) + inGrains(byChamfer)).toBeCloseTo(8, 9)
    expect(inMillimetres(length)).toBeCloseTo(inGrains(byLength) / 2.62192, 4)
    expect(inGrains(byChamfer)).toBeGreaterThan(0)
  })

  it('grinds nothing where the edge alone takes more, and says so', () => {
    const outcome = planTrim(grains(0.1), post(), millimetres(0.5))
    expect(answer(outcome).length).toBe(0)
    expect(outcome.findings).toMatchObject([{ code: 'chamfer-takes-more', wanted: grains(0.1) }])
  })

  it.each([
    ['a light arrow', -1, post(), 0.5, { code: 'light-arrow' }],
    ['no number', NaN, post(), 0.5, { code: 'outside-model' }],
    ['more than the post has', 50, post(), 0.5, { code: 'trim-into-bond' }],
    ['no post at all', 1, { sections: [], leastBond: millimetres(25) }, 0.5, { code: 'trim-into-bond' }],
    ['an edge wider than the wall', 5, post(), 3, { input: 'chamfer' }],
  ])('gives nothing for %s', (_, gr, which, chamfer, finding) => {
    expect(planTrim(grains(gr), which, millimetres(chamfer))).toMatchObject({ ok: false, findings: [finding] })
  })
})

describe('gapGlue', () => {
  // ⌀6.22 mm bore, 25 mm bond, 0.05 mm radial gap, ρ 1.15 → 0.43 gr (C).
  it('has the worked example', () => {
    const glue = gapGlue(millimetres(6.22), millimetres(25), millimetres(0.05), CURED_EPOXY.density)
    expect(Math.abs(inGrains(answer(glue)) - 0.43)).toBeLessThanOrEqual(0.005)
  })

  it.each([
    ['bore of the shaft', [1.9, 25, 0.05, 1.15]],
    ['bond length', [6, -1, 0.05, 1.15]],
    ['gap', [6, 25, 1.01, 1.15]],
    ['density of the glue', [6, 25, 0.05, NaN]],
  ] as const)('names a %s it cannot take', (input, [bore, bond, gap, density]) => {
    expect(
      gapGlue(millimetres(bore), millimetres(bond), millimetres(gap), gramsPerCubicCentimetre(density)),
    ).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('MATERIALS', () => {
  // Densities [MATERIALS], Young's moduli [HANDBOOK_E] (M), tungsten heavy alloy [B777].
  it.each([
    ['stainless 303/304', 8, 193],
    ['stainless 316', 8, 193],
    ['17-4PH', 7.8, 193],
    ['steel 1020', 7.87, 205],
    ['steel 4140', 7.85, 205],
    ['aluminium 6061', 2.7, 69],
    ['aluminium 7075', 2.81, 72],
    ['aluminium 2024', 2.78, 72],
    ['brass C36000', 8.5, 97],
    ['titanium 6Al-4V', 4.43, 114],
  ] as const)('has the figures of %s', (name, density, modulus) => {
    expect(inUnit(MATERIALS[name].density, 'g/cm³')).toBeCloseTo(density, 9)
    expect(inUnit(MATERIALS[name].youngsModulus, 'GPa')).toBeCloseTo(modulus, 9)
  })

  it('takes the middle of tungsten heavy alloy’s classes', () => {
    const { density, densityRange } = MATERIALS['tungsten heavy alloy']
    expect(inUnit(densityRange.min, 'g/cm³')).toBeCloseTo(16.85, 9)
    expect(inUnit(densityRange.max, 'g/cm³')).toBeCloseTo(18.85, 9)
    expect(density).toBeCloseTo((densityRange.min + densityRange.max) / 2, 6)
  })
})
