import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flatFire } from '@/core/flight/flat-fire'
import { trajectory } from '@/core/flight/trajectory'
import { STANDARD_GRAVITY_SI, degrees, feetPerSecond, metres, perMetre, yards } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const LAUNCH = feetPerSecond(250)
const K = perMetre(8.78068e-4)
const g = STANDARD_GRAVITY_SI

describe('trajectory', () => {
  // [MECHANICS] in vacuum: t = x/(v₀·cos θ), height = x·tan θ − g·t²/2, v² = v₀² − 2·g·height.
  it.each([0, 12, 45, -30, 80, -80])('is a parabola in vacuum at %d°', (angle) => {
    const ranges = [0, 5, 20, 60].map(yards)
    const points = answer(trajectory(LAUNCH, perMetre(0), ranges, degrees(angle)))
    points.forEach((point, i) => {
      const x = ranges[i]!
      const t = x / (LAUNCH * Math.cos(degrees(angle)))
      const height = x * Math.tan(degrees(angle)) - (g * t ** 2) / 2
      expect(point.time).toBeCloseTo(t, 10)
      expect(point.height).toBeCloseTo(height, 8)
      expect(point.drop).toBeCloseTo((g * t ** 2) / 2, 8)
      expect(point.speed).toBeCloseTo(Math.sqrt(LAUNCH ** 2 - 2 * g * height), 8)
    })
  })

  // Level and short, gravity hardly turns the path: the level speed is flat fire's, to the square of the fall's angle.
  it('is flat fire where the path is nearly level', () => {
    const fast = feetPerSecond(1000)
    const [point] = answer(trajectory(fast, K, [yards(20)]))
    const flat = answer(flatFire(fast, K, yards(20)))
    const level = point!.speed * Math.cos(point!.angle)
    expect(Math.abs(level / flat.speed - 1)).toBeLessThan(1e-6)
    expect(Math.abs(point!.time / flat.time - 1)).toBeLessThan(1e-6)
    // drop with drag in flat fire: (g/2)·t²·(1 + 2kx/3·… ) lies between vacuum's over launch and over retained speed
    expect(point!.drop).toBeGreaterThan((g / 2) * (yards(20) / fast) ** 2)
    expect(point!.drop).toBeLessThan((g / 2) * (yards(20) / flat.speed) ** 2)
  })

  // Second-order series of the flat-fire drop, [MECHANICS]: g·(e^(2kx) − 2kx − 1)/(4k²v₀²).
  it('drops as the closed form of flat fire does, within the fall’s angle squared', () => {
    const [point] = answer(trajectory(LAUNCH, K, [yards(20)]))
    const kx = K * yards(20)
    const closed = (g * (Math.expm1(2 * kx) - 2 * kx)) / (4 * K ** 2 * LAUNCH ** 2)
    expect(Math.abs(point!.drop / closed - 1)).toBeLessThan(1e-4)
  })

  it.each([
    { angle: 0, k: 8.78068e-4 },
    { angle: 30, k: 5e-3 },
    { angle: -20, k: 1e-3 },
  ])('balances energy at $angle° and $k /m: lost is drag’s work, over its own quadrature', ({ angle, k }) => {
    const n = 2000
    const x = Array.from({ length: n + 1 }, (_, i) => metres((60 * i) / n))
    const points = answer(trajectory(LAUNCH, perMetre(k), x, degrees(angle)))
    // Work of drag for each kg, k·v²·ds with ds = dx/cos of the path's angle, by Simpson's rule.
    const force = points.map((point) => (k * point.speed ** 2) / Math.cos(point.angle))
    const weight = (i: number) => (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2)
    const work = force.reduce((total, f, i) => total + f * weight(i), 0) * (60 / n / 3)
    const end = points.at(-1)!
    const lost = LAUNCH ** 2 / 2 - end.speed ** 2 / 2 - g * end.height
    expect(Math.abs(work / lost - 1)).toBeLessThan(1e-9)
  })

  it('does not depend on which other ranges are asked for, or in which order', () => {
    const alone = answer(trajectory(LAUNCH, K, [yards(40)]))[0]!
    const among = answer(trajectory(LAUNCH, K, [60, 40, 3, 40, 20].map(yards)))
    expect(among.map(({ range }) => range)).toEqual([60, 40, 3, 40, 20].map(yards))
    expect(among[1]!.drop).toBeCloseTo(alone.drop, 10)
    expect(among[3]).toEqual(among[1])
  })

  it('is at the launch at no range at all', () => {
    const point = answer(trajectory(LAUNCH, K, [yards(0)]))[0]!
    expect(point).toMatchObject({ drop: 0, height: 0, time: 0, angle: 0 })
    expect(point.speed).toBeCloseTo(LAUNCH, 12)
  })

  it('drops more, later and slower the farther it is and the more drag there is', () => {
    const ranges = [10, 20, 40, 60, 80].map(yards)
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 4e-3, noNaN: true }), (k) => {
        const points = answer(trajectory(LAUNCH, perMetre(k), ranges))
        const rough = answer(trajectory(LAUNCH, perMetre(k * 1.1), ranges))
        return points.every((point, i) => {
          const before = points[i - 1]
          const isFarther = !before || (point.drop > before.drop && point.time > before.time)
          return (
            isFarther && rough[i]!.drop > point.drop && rough[i]!.time > point.time && rough[i]!.speed < point.speed
          )
        })
      }),
    )
  })

  it('gives what it reaches and names what it does not', () => {
    const outcome = trajectory(feetPerSecond(250), perMetre(0.05), [metres(10), metres(300)])
    expect(answer(outcome)).toHaveLength(1)
    expect(outcome.findings).toEqual([{ code: 'range-beyond-flight', range: metres(300) }])
    expect(trajectory(feetPerSecond(250), perMetre(0.05), [metres(300)])).toEqual({
      ok: false,
      findings: [{ code: 'range-beyond-flight', range: metres(300) }],
    })
  })

  it('names a range before which the arrow has fallen straight down', () => {
    const outcome = trajectory(feetPerSecond(30), perMetre(0.015), [metres(5), metres(450)])
    expect(answer(outcome)).toHaveLength(1)
    expect(outcome.findings).toMatchObject([{ code: 'range-beyond-flight' }])
  })

  it.each([
    { fps: 9, k: 0, ranges: [10], angle: 0, finding: { input: 'launch speed' } },
    { fps: 250, k: -1, ranges: [10], angle: 0, finding: { input: 'loss of speed with distance' } },
    { fps: 250, k: 0, ranges: [10, -1], angle: 0, finding: { input: 'range 2' } },
    { fps: 250, k: 0, ranges: [501], angle: 0, finding: { input: 'range 1' } },
    { fps: 250, k: 0, ranges: [10], angle: 80.1, finding: { input: 'launch angle' } },
    { fps: 250, k: 0, ranges: [10], angle: Number.NaN, finding: { input: 'launch angle' } },
    { fps: 250, k: 0, ranges: [], angle: 0, finding: { code: 'no-ranges' } },
  ])('gives nothing at $fps ft/s, $k /m, $ranges m, $angle°', ({ fps, k, ranges, angle, finding }) => {
    expect(trajectory(feetPerSecond(fps), perMetre(k), ranges.map(metres), degrees(angle))).toMatchObject({
      ok: false,
      findings: [finding],
    })
  })

  it('answers with finite numbers or with findings, whatever it is given', () => {
    const number = fc.oneof(fc.double(), fc.double({ min: 0, max: 600 }))
    const decay = fc.oneof(fc.double(), fc.double({ min: 0, max: 1 }), fc.double({ min: 0, max: 0.02 }))
    const angle = fc.oneof(fc.double(), fc.double({ min: -80, max: 80 }))
    fc.assert(
      fc.property(number, decay, fc.array(number, { maxLength: 3 }), angle, (fps, k, ranges, at) => {
        const outcome = trajectory(feetPerSecond(fps), perMetre(k), ranges.map(metres), degrees(at))
        if (!outcome.ok) return outcome.findings.length > 0
        return outcome.value.every((point) => Object.values(point).every(Number.isFinite))
      }),
      { numRuns: 2000 },
    )
  })
})
