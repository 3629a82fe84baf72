import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { kineticEnergy } from '@/core/energy/kinetic-energy'
import { momentum } from '@/core/energy/momentum'
import { dragDecay } from '@/core/flight/drag-decay'
import { flightTable } from '@/core/flight/flight-table'
import { trajectory } from '@/core/flight/trajectory'
import { symmetricBand } from '@/core/numeric/band'
import { feetPerSecond, grains, kilogramsPerCubicMetre, metres, millimetres, ratio, yards } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { seededNormal } from '@tests/support/seeded'

const arrow = (fps: number, fpsSd: number, drag: number, dragSd: number) => ({
  mass: grains(650),
  diameter: millimetres(6.2),
  density: kilogramsPerCubicMetre(1.225),
  speed: symmetricBand(feetPerSecond(fps), feetPerSecond(fpsSd)),
  drag: symmetricBand(ratio(drag), ratio(dragSd)),
})
const RANGES = [20, 40, 60].map(yards)

describe('flightTable', () => {
  it('is the trajectory with its energy and momentum', () => {
    const rows = answer(flightTable(arrow(250, 2, 2, 0.1), RANGES))
    const decay = answer(dragDecay({ ...arrow(250, 2, 2, 0.1), drag: ratio(2) }))
    const points = answer(trajectory(feetPerSecond(250), decay, RANGES))
    rows.forEach((row, i) => {
      const point = points[i]!
      expect(row.range).toBe(RANGES[i])
      expect(row.speed.value).toBe(point.speed)
      expect(row.drop.value).toBe(point.drop)
      expect(row.time.value).toBe(point.time)
      expect(row.energy.value).toBeCloseTo(answer(kineticEnergy(grains(650), point.speed)), 10)
      expect(row.momentum.value).toBeCloseTo(answer(momentum(grains(650), point.speed)), 10)
      expect(row.energyKept).toBeCloseTo((point.speed / feetPerSecond(250)) ** 2, 12)
    })
  })

  // [MECHANICS] flat fire keeps 93.779 % at 40 yd; falling gives about half a percent back.
  it('keeps a little more energy at 40 yd than flat fire’s 93.779 %, by the height fallen', () => {
    const row = answer(flightTable(arrow(250, 0, 2, 0), [yards(40)]))[0]!
    expect(row.energyKept).toBeGreaterThan(0.93779)
    expect(row.energyKept - (2 * 9.80665 * row.drop.value) / feetPerSecond(250) ** 2).toBeCloseTo(0.93779, 3)
  })

  it('has no error where nothing is in doubt', () => {
    const row = answer(flightTable(arrow(250, 0, 2, 0), [yards(40)]))[0]!
    for (const { sd, low, value, high } of [row.speed, row.energy, row.momentum, row.drop, row.time])
      expect([sd, low, high]).toEqual([0, value, value])
  })

  // Seeded Monte Carlo of 2,000 flights; 5 % covers sampling.
  it('carries the errors of speed and drag as a Monte Carlo does', () => {
    const normal = seededNormal(31)
    const flights = Array.from({ length: 2000 }, () => {
      const drawn = arrow(250 + 3 * normal(), 0, 2.3 + 0.17 * normal(), 0)
      return answer(flightTable(drawn, [yards(40)]))[0]!
    })
    const row = answer(flightTable(arrow(250, 3, 2.3, 0.17), [yards(40)]))[0]!
    for (const of of ['speed', 'energy', 'momentum', 'drop', 'time'] as const) {
      const values = flights.map((flight) => flight[of].value)
      const mean = values.reduce((a, b) => a + b, 0) / values.length
      const sd = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length)
      expect(Math.abs(sd / row[of].sd - 1)).toBeLessThan(0.05)
    }
  })

  it('takes the band of 2.0 to 2.6 where no drag is told', () => {
    const { drag: _, ...untold } = arrow(250, 0, 0, 0)
    const row = answer(flightTable(untold, [yards(40)]))[0]!
    const smooth = answer(flightTable(arrow(250, 0, 2, 0), [yards(40)]))[0]!
    const rough = answer(flightTable(arrow(250, 0, 2.6, 0), [yards(40)]))[0]!
    expect(row.speed.value).toBeLessThan(smooth.speed.value)
    expect(row.speed.value).toBeGreaterThan(rough.speed.value)
    expect(row.speed.low).toBeLessThan(rough.speed.value)
    expect(row.speed.high).toBeGreaterThan(smooth.speed.value)
  })

  it('gives what is reached and names what is not', () => {
    const feather = { ...arrow(250, 2, 2, 0.1), mass: grains(5), diameter: millimetres(20) }
    const outcome = flightTable(feather, [metres(3), metres(400)])
    expect(answer(outcome)).toHaveLength(1)
    expect(outcome.findings).toEqual([{ code: 'range-beyond-flight', range: metres(400) }])
    expect(flightTable(feather, [metres(400)])).toMatchObject({
      ok: false,
      findings: [{ code: 'range-beyond-flight' }],
    })
  })

  it.each([
    { of: { ...arrow(250, 2, 2, 0.1), mass: grains(0) }, ranges: RANGES, finding: { input: 'arrow weight' } },
    { of: arrow(9, 0, 2, 0.1), ranges: RANGES, finding: { input: 'launch speed' } },
    { of: arrow(250, -1, 2, 0.1), ranges: RANGES, finding: { input: 'error of the launch speed' } },
    { of: arrow(250, 251, 2, 0.1), ranges: RANGES, finding: { input: 'error of the launch speed' } },
    { of: arrow(250, 2, 2, 2.1), ranges: RANGES, finding: { input: 'error of the drag coefficient' } },
    { of: arrow(250, 2, 2, 0.1), ranges: [], finding: { code: 'no-ranges' } },
    { of: arrow(250, 2, 2, 0.1), ranges: [metres(Number.NaN)], finding: { input: 'range 1' } },
  ])('gives nothing for bad input, case %#', ({ of, ranges, finding }) => {
    expect(flightTable(of, ranges)).toMatchObject({ ok: false, findings: [finding] })
  })

  it('answers with finite numbers or with findings, whatever it is given', () => {
    const number = fc.oneof(fc.double(), fc.double({ min: 0, max: 600 }))
    const small = fc.oneof(fc.double({ min: 0, max: 1 }), fc.double())
    fc.assert(
      fc.property(
        number,
        number,
        fc.double({ min: 1, max: 30 }),
        small,
        small,
        number,
        (gr, fps, mm, sd, dragSd, m) => {
          const wild = {
            ...arrow(fps, fps * sd, 5 * sd, 5 * sd * dragSd),
            mass: grains(gr),
            diameter: millimetres(mm),
          }
          const outcome = flightTable(wild, [metres(m), metres(m / 3)])
          if (!outcome.ok) return outcome.findings.length > 0
          return outcome.value.every((row) =>
            [row.speed, row.energy, row.momentum, row.drop, row.time].every((e) =>
              Object.values(e).every(Number.isFinite),
            ),
          )
        },
      ),
      { numRuns: 2000 },
    )
  })
})
