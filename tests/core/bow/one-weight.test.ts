import { describe, expect, it } from 'vitest'
import { launchSpeed } from '@/core/bow/launch-speed'
import { oneWeight } from '@/core/bow/one-weight'
import { VIRTUAL_MASS_PRIOR } from '@/core/bow/virtual-mass-prior'
import { feetPerSecond, grains, inFeetPerSecond, inFootPounds, inGrains } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

const reading = (gr: number, fps: number) => ({ mass: grains(gr), speed: feetPerSecond(fps) })
const codes = (outcome: { readonly findings: readonly { readonly code: string }[] }) =>
  outcome.findings.map(({ code }) => code)

describe('oneWeight', () => {
  // Page-2 law by hand: ½·(452 + 60) gr·(268 ft/s)² over 450 436.68 = 81.6398 ft·lbf.
  it('is ½(m + m_v)v²', () => {
    const bow = answer(oneWeight([reading(452, 268)], { value: grains(60), sd: grains(10) }))
    expect(inFootPounds(bow.energy.value)).toBeCloseTo((512 * 268 ** 2) / 450_436.68, 4)
    expect(inGrains(bow.virtualMass.value)).toBeCloseTo(60, 12)
  })

  // Typical virtual masses: common practice, no source.
  it.each([
    ['compound', 80, 30],
    ['recurve', 90, 30],
    ['longbow', 130, 40],
  ] as const)('believes a %s has %d ± %d gr until it is measured', (kind, value, sd) => {
    expect(inGrains(VIRTUAL_MASS_PRIOR[kind].value)).toBeCloseTo(value, 12)
    expect(inGrains(VIRTUAL_MASS_PRIOR[kind].sd)).toBeCloseTo(sd, 12)
  })

  it('is as sure as the reading at its own weight, less at others, and says extrapolated there', () => {
    const bow = answer(oneWeight([reading(452, 268)], VIRTUAL_MASS_PRIOR.compound, feetPerSecond(1.5)))
    const own = launchSpeed(bow, grains(452))
    expect(inFeetPerSecond(answer(own).sd)).toBeCloseTo(1.5, 9)
    expect(codes(own)).toEqual([])
    const heavy = launchSpeed(bow, grains(825))
    expect(inFeetPerSecond(answer(heavy).sd)).toBeGreaterThan(1.5)
    expect(heavy).toMatchObject({ findings: [{ code: 'extrapolated', measured: { min: grains(452) } }] })
  })

  // Seeded Monte Carlo of 50,000 bows and readings; 2 % covers sampling and curvature.
  it('carries both errors to a speed as a Monte Carlo does', () => {
    const normal = seededNormal(11)
    const belief = { value: grains(80), sd: grains(20) }
    const bow = answer(oneWeight([reading(452, 268)], belief, feetPerSecond(1.5)))
    const speeds = Array.from({ length: 50_000 }, () => {
      const massGr = 80 + 20 * normal()
      const fps = 268 + 1.5 * normal()
      return fps * Math.sqrt((452 + massGr) / (825 + massGr))
    })
    const mean = speeds.reduce((a, b) => a + b, 0) / speeds.length
    const sd = Math.sqrt(speeds.reduce((a, b) => a + (b - mean) ** 2, 0) / speeds.length)
    expect(Math.abs(sd / inFeetPerSecond(answer(launchSpeed(bow, grains(825))).sd) - 1)).toBeLessThan(0.02)
  })

  it('takes several readings at their mean, and is surer for it', () => {
    const four = [266, 270, 267, 269].map((fps) => reading(452, fps))
    const bow = answer(oneWeight(four, VIRTUAL_MASS_PRIOR.compound, feetPerSecond(1.5)))
    const speed = answer(launchSpeed(bow, grains(452)))
    expect(inFeetPerSecond(speed.value)).toBeCloseTo(268, 9)
    expect(inFeetPerSecond(speed.sd)).toBeCloseTo(0.75, 9)
  })

  it('takes a virtual mass that is surely known', () => {
    const bow = answer(oneWeight([reading(452, 268)], { value: grains(60), sd: grains(0) }))
    expect(bow.correlation).toBe(0)
    expect(answer(launchSpeed(bow, grains(825))).sd).toBeGreaterThan(0)
  })

  it.each([
    { readings: [], belief: VIRTUAL_MASS_PRIOR.compound, finding: { code: 'too-few-points', needed: 1 } },
    { readings: [reading(0, 250)], belief: VIRTUAL_MASS_PRIOR.compound, finding: { input: 'weight of reading 1' } },
    {
      readings: [reading(452, 268)],
      belief: { value: grains(5001), sd: grains(1) },
      finding: { input: 'virtual mass' },
    },
    {
      readings: [reading(452, 268)],
      belief: { value: grains(80), sd: grains(201) },
      finding: { input: 'error of the virtual mass' },
    },
  ])('gives no energy for bad input, case %#', ({ readings, belief, finding }) => {
    expect(oneWeight(readings, belief)).toMatchObject({ ok: false, findings: [finding] })
  })
})

describe('launchSpeed', () => {
  const bow = answer(oneWeight([reading(452, 268)], VIRTUAL_MASS_PRIOR.compound))

  it('falls as the arrow gets heavier, while the energy it carries rises', () => {
    const rows = [300, 452, 600, 825, 1200].map((gr) => ({ gr, fps: answer(launchSpeed(bow, grains(gr))).value }))
    rows.slice(1).forEach(({ gr, fps }, i) => {
      expect(fps).toBeLessThan(rows[i]!.fps)
      expect(gr * fps ** 2).toBeGreaterThan(rows[i]!.gr * rows[i]!.fps ** 2)
      expect(grains(gr) * fps ** 2 * 0.5).toBeLessThan(bow.energy.value)
    })
  })

  it.each([0, 20_001, Number.NaN, Number.POSITIVE_INFINITY])('gives no speed for an arrow of %d gr', (gr) => {
    expect(launchSpeed(bow, grains(gr))).toMatchObject({ ok: false, findings: [{ input: 'arrow weight' }] })
  })

  it('stays finite at the ends of every bound', () => {
    for (const [gr, fps, mv, sd] of [
      [1, 10, 0, 200],
      [20_000, 1000, 5000, 200],
      [1, 1000, 0, 0],
    ] as const) {
      const wide = answer(oneWeight([reading(gr, fps)], { value: grains(mv), sd: grains(sd) }, feetPerSecond(50)))
      for (const at of [1, 20_000]) {
        const speed = answer(launchSpeed(wide, grains(at)))
        expect(Object.values(speed).every((v) => Number.isFinite(v) && v >= 0)).toBe(true)
      }
    }
  })
})
