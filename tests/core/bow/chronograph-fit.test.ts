// long because tables stand in it as they were printed
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chronographFit } from '@/core/bow/chronograph-fit'
import { launchSpeed } from '@/core/bow/launch-speed'
import {
  feetPerSecond,
  footPounds,
  grains,
  grams,
  inFeetPerSecond,
  inFootPounds,
  inGrains,
  inUnit,
  metresPerSecond,
} from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

const reading = (gr: number, fps: number) => ({ mass: grains(gr), speed: feetPerSecond(fps) })
const shot = (ftLbf: number, massGr: number, gr: number) =>
  Math.sqrt((2 * footPounds(ftLbf)) / grains(gr + massGr)) / feetPerSecond(1)
const codes = (outcome: { readonly findings: readonly { readonly code: string }[] }) =>
  outcome.findings.map(({ code }) => code)

describe('chronographFit', () => {
  // [KLOPSTEG] E = ½(m + m_v)v² at E 75 ft·lbf, m_v 110 gr, computed by hand; speeds to half of the last printed digit.
  it.each([
    [350, 271.0],
    [450, 245.61],
    [550, 226.24],
    [650, 210.83],
    [800, 192.68],
  ])('stands on a law that shoots %d gr at %d ft/s from 75 ft·lbf and 110 gr', (gr, fps) => {
    expect(Math.abs(shot(75, 110, gr) - fps)).toBeLessThanOrEqual(0.005)
  })

  it('returns the energy and virtual mass of readings without noise', () => {
    const fit = answer(chronographFit([350, 450, 550, 650, 800].map((gr) => reading(gr, shot(75, 110, gr)))))
    expect(inFootPounds(fit.energy.value)).toBeCloseTo(75, 9)
    expect(inGrains(fit.virtualMass.value)).toBeCloseTo(110, 9)
  })

  // [LIMBS] W = 42.97 J stored, virtual mass 5.7697 g + 0.0583·m: speeds as published to 0.1 mm/s.
  const RECURVE = [
    [15, 63.0125],
    [20, 56.4851],
    [25, 51.64],
    [30, 47.8601],
  ] as const
  const recurveSpeed = (g: number) => Math.sqrt((2 * 42.97) / ((g + 5.7697 + 0.0583 * g) / 1000)) // m/s
  it.each(RECURVE)('has the published speeds of the measured recurve: %d g at %d m/s', (g, mps) => {
    expect(Math.abs(recurveSpeed(g) - mps)).toBeLessThanOrEqual(0.00005)
  })

  it('returns 40.603 J and 5.4519 g of the measured recurve, below its 42.97 J stored', () => {
    const fit = answer(
      chronographFit(RECURVE.map(([g]) => ({ mass: grams(g), speed: metresPerSecond(recurveSpeed(g)) }))),
    )
    expect(Math.abs(fit.energy.value - 40.603)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(inUnit(fit.virtualMass.value, 'g') - 5.4519)).toBeLessThanOrEqual(0.00005)
  })

  it('goes through two readings exactly', () => {
    const fit = answer(chronographFit([reading(452, 268), reading(601, 236.5)]))
    for (const [gr, fps] of [
      [452, 268],
      [601, 236.5],
    ] as const)
      expect(inFeetPerSecond(answer(launchSpeed(fit, grains(gr))).value)).toBeCloseTo(fps, 9)
  })

  // Computed twice: by hand from the two-point line, and by the Monte Carlo below.
  it('is sure of the speed at 825 gr to ±2.6 ft/s from two readings of ±1.5 at 452 and 601 gr', () => {
    const fit = answer(chronographFit([reading(452, 268), reading(601, 236.5)], feetPerSecond(1.5)))
    expect(Math.abs(inFeetPerSecond(answer(launchSpeed(fit, grains(825))).sd) - 2.6)).toBeLessThanOrEqual(0.05)
  })

  it('is as sure of a speed as the reading itself at a weight that was shot', () => {
    const fit = answer(chronographFit([reading(452, 268), reading(601, 236.5)], feetPerSecond(1.5)))
    expect(inFeetPerSecond(answer(launchSpeed(fit, grains(452))).sd)).toBeCloseTo(1.5, 6)
    expect(inFeetPerSecond(answer(launchSpeed(fit, grains(601))).sd)).toBeCloseTo(1.5, 6)
  })

  // Seeded Monte Carlo of 5,000 sets against the propagated errors; 3 % covers sampling and the curvature of 1/b.
  it.each([{ weights: [452, 601] }, { weights: [420, 500, 560, 640, 700] }])(
    'carries the error of readings at $weights gr as a Monte Carlo does',
    ({ weights }) => {
      const normal = seededNormal(7)
      const sets = Array.from({ length: 5000 }, () =>
        answer(
          chronographFit(
            weights.map((gr) => reading(gr, shot(75, 80, gr) + 0.5 * normal())),
            feetPerSecond(0.5),
          ),
        ),
      )
      const exact = answer(
        chronographFit(
          weights.map((gr) => reading(gr, shot(75, 80, gr))),
          feetPerSecond(0.5),
        ),
      )
      const spread = (values: readonly number[]) => {
        const mean = values.reduce((a, b) => a + b, 0) / values.length
        return Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / (values.length - 1))
      }
      const energies = sets.map(({ energy }) => energy.value)
      const masses = sets.map(({ virtualMass }) => virtualMass.value)
      expect(Math.abs(spread(energies) / exact.energy.sd - 1)).toBeLessThan(0.03)
      expect(Math.abs(spread(masses) / exact.virtualMass.sd - 1)).toBeLessThan(0.03)
      for (const gr of [400, 550, 825]) {
        const speeds = sets.map((fit) => answer(launchSpeed(fit, grains(gr))).value)
        expect(Math.abs(spread(speeds) / answer(launchSpeed(exact, grains(gr))).sd - 1)).toBeLessThan(0.03)
      }
    },
  )

  it('returns any bow from its own speeds', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 150, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.uniqueArray(fc.integer({ min: 6, max: 24 }), { minLength: 2, maxLength: 6 }),
        (ftLbf, massGr, fifties) => {
          const fit = answer(chronographFit(fifties.map((n) => reading(50 * n, shot(ftLbf, massGr, 50 * n)))))
          return (
            Math.abs(inFootPounds(fit.energy.value) / ftLbf - 1) < 1e-9 &&
            Math.abs(inGrains(fit.virtualMass.value) - massGr) < 1e-7
          )
        },
      ),
    )
  })

  it('answers the same in whatever order the readings come', () => {
    const readings = [reading(420, 270), reading(520, 247), reading(600, 233), reading(700, 217)]
    const there = answer(chronographFit(readings))
    const back = answer(chronographFit(readings.toReversed()))
    expect(back.energy.value).toBeCloseTo(there.energy.value, 9)
    expect(back.virtualMass.sd).toBeCloseTo(there.virtualMass.sd, 12)
  })

  it('is surer the more is shot', () => {
    const pair = [reading(450, shot(75, 80, 450)), reading(650, shot(75, 80, 650))]
    const once = answer(chronographFit(pair))
    const fourTimes = answer(chronographFit([...pair, ...pair, ...pair, ...pair]))
    expect(fourTimes.energy.sd / once.energy.sd).toBeCloseTo(0.5, 9)
  })

  it('takes its error as larger when the readings scatter more than the chronograph explains', () => {
    const readings = [reading(420, 275), reading(480, 251), reading(560, 246), reading(640, 222), reading(700, 222)]
    const outcome = chronographFit(readings, feetPerSecond(1))
    expect(codes(outcome)).toContain('readings-scatter')
    const calm = chronographFit(readings, feetPerSecond(20))
    expect(codes(calm)).not.toContain('readings-scatter')
  })

  it('weighs every reading alike, as plain least squares of 1/v² on weight does', () => {
    const readings = [reading(420, 272), reading(520, 247), reading(700, 217)]
    const fit = answer(chronographFit(readings))
    // Normal equations by hand, in SI.
    const m = readings.map(({ mass }) => mass as number)
    const y = readings.map(({ speed }) => speed ** -2)
    const mean = (v: readonly number[]) => v.reduce((a, b) => a + b, 0) / v.length
    const slope =
      m.reduce((a, x, i) => a + (x - mean(m)) * (y[i]! - mean(y)), 0) / m.reduce((a, x) => a + (x - mean(m)) ** 2, 0)
    expect(fit.energy.value).toBeCloseTo(1 / (2 * slope), 9)
    expect(fit.virtualMass.value).toBeCloseTo((mean(y) - slope * mean(m)) / slope, 12)
  })

  describe('with a bad set', () => {
    it.each([0, 1])('needs two readings, not %d', (count) => {
      expect(chronographFit([reading(450, 260)].slice(0, count))).toEqual({
        ok: false,
        findings: [{ code: 'too-few-points', of: 'chronograph readings', count, needed: 2 }],
      })
    })

    it('cannot fit two equal weights', () => {
      expect(codes(chronographFit([reading(450, 268), reading(450.9, 267)]))).toEqual(['equal-weights'])
    })

    it('refuses weights much too close, and says so of close ones', () => {
      const pair = (apart: number) => chronographFit([450, 450 + apart].map((gr) => reading(gr, shot(75, 80, gr))))
      expect(pair(5)).toMatchObject({ ok: false, findings: [{ code: 'weights-too-close' }] })
      expect(pair(25)).toMatchObject({ ok: true, findings: [{ code: 'weights-too-close' }] })
      expect(pair(100)).toMatchObject({ ok: true, findings: [] })
    })

    it('refuses speed that rises, or hardly falls, with weight', () => {
      expect(codes(chronographFit([reading(450, 250), reading(600, 255)]))).toEqual(['speed-does-not-fall-with-weight'])
      expect(codes(chronographFit([reading(450, 250), reading(600, 249.5)]))).toEqual([
        'speed-does-not-fall-with-weight',
      ])
    })

    it('refuses a negative virtual mass', () => {
      const outcome = chronographFit([reading(450, 280), reading(600, 220)])
      expect(outcome).toMatchObject({ ok: false, findings: [{ code: 'negative-virtual-mass' }] })
    })

    it('names a reading that three others contradict, and keeps it in the fit', () => {
      const outcome = chronographFit(
        [450, 520, 600, 700].map((gr) => reading(gr, shot(75, 80, gr) + (gr === 520 ? 15 : 0))),
      )
      expect(outcome.ok).toBe(true)
      const named = outcome.findings.find(({ code }) => code === 'wild-reading')
      expect(named).toMatchObject({ position: 2, mass: grains(520) })
      expect(named?.code === 'wild-reading' && inFeetPerSecond(named.expected)).toBeCloseTo(shot(75, 80, 520), 6)
    })

    it('names the farther of two that the others contradict', () => {
      const readings = [reading(420, 261.9), reading(500, 231.9), reading(600, 226.8), reading(700, 216)]
      const outcome = chronographFit(readings)
      const wild = outcome.findings.filter(({ code }) => code === 'wild-reading')
      expect(wild).toMatchObject([{ position: 2 }])
    })

    it('names the slip of a decimal point among five, whichever it is', () => {
      for (const slip of [0, 1, 2, 3, 4]) {
        const outcome = chronographFit(
          [420, 480, 550, 620, 700].map((gr, i) => reading(gr, shot(75, 80, gr) * (i === slip ? 0.1 : 1))),
        )
        expect(outcome.findings).toContainEqual(expect.objectContaining({ code: 'wild-reading', position: slip + 1 }))
      }
    })

    it('names one of three when they are impossible together and only leaving out that one makes sense', () => {
      const outcome = chronographFit([reading(450, shot(75, 80, 450)), reading(550, 300), reading(650, 211)])
      expect(outcome).toMatchObject({ ok: false })
      expect(outcome.findings.at(-1)).toMatchObject({ code: 'wild-reading', position: 2 })
    })

    it('names none of three that are possible together', () => {
      expect(codes(chronographFit([reading(450, 262), reading(550, 248), reading(650, 222)]))).not.toContain(
        'wild-reading',
      )
    })

    it('names none of good readings, with noise of the chronograph only', () => {
      const normal = seededNormal(3)
      const alarms = Array.from({ length: 500 }, () =>
        chronographFit([420, 480, 550, 620, 700].map((gr) => reading(gr, shot(75, 80, gr) + 1.5 * normal()))),
      ).filter((outcome) => codes(outcome).includes('wild-reading'))
      expect(alarms.length).toBeLessThan(20) // 4 %; each set asks five times
    })
  })

  it.each([
    { what: 'weight of reading 2', readings: [reading(450, 260), reading(Number.NaN, 250)], sd: 1.5 },
    { what: 'speed of reading 1', readings: [reading(450, 0), reading(600, 250)], sd: 1.5 },
    { what: 'speed of reading 2', readings: [reading(450, 260), reading(600, 1000.1)], sd: 1.5 },
    { what: 'chronograph error', readings: [reading(450, 260), reading(600, 235)], sd: 0 },
    { what: 'chronograph error', readings: [reading(450, 260), reading(600, 235)], sd: 50.1 },
  ])('names the $what when it is outside the model', ({ what, readings, sd }) => {
    expect(chronographFit(readings, feetPerSecond(sd))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input: what }],
    })
  })

  it('answers with finite numbers or with findings, whatever it is given', () => {
    const number = fc.oneof(fc.double(), fc.double({ min: 1, max: 1000 }))
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { maxLength: 6 }), number, number, (pairs, sd, gr) => {
        const fit = chronographFit(
          pairs.map(([m, v]) => reading(m, v)),
          feetPerSecond(sd),
        )
        if (!fit.ok) return fit.findings.length > 0
        const speed = launchSpeed(fit.value, grains(gr))
        const { energy, virtualMass, correlation } = fit.value
        const numbers = [...Object.values(energy), ...Object.values(virtualMass), correlation]
        return (
          numbers.every(Number.isFinite) &&
          (speed.ok ? Object.values(speed.value).every(Number.isFinite) : speed.findings.length > 0)
        )
      }),
      { numRuns: 3000 },
    )
  })
})
