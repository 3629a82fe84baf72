import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type DrawPoint, storedEnergy } from '@/core/bow/stored-energy'
import { footPounds, inches, joules, metres, newtons, poundsForce, quantity } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const curve = (from: number, to: number, count: number, force: (share: number) => number): DrawPoint[] =>
  Array.from({ length: count }, (_, i) => ({
    draw: inches(from + ((to - from) * i) / (count - 1)),
    force: poundsForce(force(i / (count - 1))),
  }))
const straight = (count: number) => curve(7, 28, count, (x) => 70 * x)
const codes = (outcome: { readonly findings: readonly { readonly code: string }[] }) =>
  outcome.findings.map(({ code }) => code)

describe('storedEnergy', () => {
  // [TUYN92] Table I: energy W, effective weight F and effective draw d of four recurves, W/(F·d) to three digits.
  it.each([
    { bow: 'OK1', w: 42.6, f: 170.5, d: 43.0, fullness: 0.581 },
    { bow: 'OK2', w: 50.3, f: 170, d: 50.9, fullness: 0.581 },
    { bow: 'OK3', w: 45.6, f: 178, d: 44.0, fullness: 0.582 },
    { bow: 'GH', w: 33.2, f: 130, d: 42.9, fullness: 0.595 },
  ])('gives the published W and $fullness of $bow for a curve of that area', ({ w, f, d, fullness }) => {
    // A curve F·(x + a·x(1−x)) has the share ½ + a/6; the trapezoids of 800 steps miss it by less than 1e-6.
    const a = 6 * (w / (f * (d / 100)) - 0.5)
    const points = Array.from({ length: 801 }, (_, i) => {
      const x = i / 800
      return { draw: quantity(22 + d * x, 'cm'), force: newtons(f * (x + a * x * (1 - x))) }
    })
    const stored = answer(storedEnergy(points))
    expect(Math.abs(stored.energy.value - w)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(stored.fullness - fullness)).toBeLessThanOrEqual(0.0005)
    expect(stored.peak).toBeCloseTo(f, 9)
    expect(stored.stroke).toBeCloseTo(metres(d / 100), 12)
  })

  it('is exactly half of peak times stroke for a straight line, however many points', () => {
    for (const count of [3, 4, 22]) {
      const stored = answer(storedEnergy(straight(count)))
      expect(stored.fullness).toBeCloseTo(0.5, 12)
      expect(stored.energy.value).toBeCloseTo(footPounds((70 * 21) / 24), 9)
      expect(stored.energy.sd / stored.energy.value).toBeCloseTo(0.01, 9) // the scale's 1 % alone
    }
  })

  it('is exact for a curve of straight pieces with its corners among the points', () => {
    const corners: DrawPoint[] = [
      [7, 0],
      [11, 70],
      [24, 70],
      [28, 15],
    ].map(([draw, force]) => ({ draw: inches(draw!), force: poundsForce(force!) }))
    expect(answer(storedEnergy(corners)).energy.value).toBeCloseTo(
      footPounds((0.5 * 70 * 4 + 70 * 13 + 0.5 * 85 * 4) / 12),
      9,
    )
  })

  it('knows about how much its trapezoids leave out of a bent curve', () => {
    const bent = (count: number) => curve(7, 28, count, (x) => 70 * Math.sin((Math.PI / 2) * x))
    const exact = joules((quantity(70, 'lbf') * quantity(21, 'in') * 2) / Math.PI)
    const stored = answer(storedEnergy(bent(7)))
    const left = exact - stored.energy.value
    const counted = Math.sqrt(stored.energy.sd ** 2 - (0.01 * stored.energy.value) ** 2)
    expect(left).toBeGreaterThan(0) // trapezoids lie under a curve that bulges
    expect(counted / left).toBeGreaterThan(0.6)
    expect(counted / left).toBeLessThan(1.4)
  })

  it('grows with force and with stroke in proportion, and does not mind where the draw is measured from', () => {
    const factor = fc.double({ min: 0.3, max: 2, noNaN: true })
    const forces = fc.array(fc.double({ min: 4, max: 90, noNaN: true }), { minLength: 3, maxLength: 12 })
    fc.assert(
      fc.property(factor, factor, fc.double({ min: 0, max: 10, noNaN: true }), forces, (force, stroke, shift, rows) => {
        const of = (f: number, s: number, d: number) =>
          answer(storedEnergy(rows.map((row, i) => ({ draw: inches(d + 1.5 * s * i), force: poundsForce(f * row) }))))
        const plain = of(1, 1, 0)
        const other = of(force, stroke, shift)
        return (
          Math.abs(other.energy.value / (plain.energy.value * force * stroke) - 1) < 1e-9 &&
          Math.abs(other.fullness / plain.fullness - 1) < 1e-9
        )
      }),
    )
  })

  describe('with a let-down curve', () => {
    it('gives the share that does not come back', () => {
      const down = curve(7, 28, 9, (x) => 63 * x)
      expect(answer(storedEnergy(straight(9), down)).hysteresis).toBeCloseTo(0.1, 12)
      expect(answer(storedEnergy(straight(9), down.toReversed())).hysteresis).toBeCloseTo(0.1, 12)
    })

    it('says when it lies above the other, and when it spans another draw', () => {
      const above = storedEnergy(
        straight(9),
        curve(7, 28, 9, (x) => 71 * x),
      )
      expect(above).toMatchObject({ ok: true, findings: [{ code: 'let-down-above-draw' }] })
      const shorter = storedEnergy(
        straight(9),
        curve(7, 27.4, 9, (x) => 60 * x),
      )
      expect(shorter).toMatchObject({ ok: true, findings: [{ code: 'let-down-spans-another-draw' }] })
      expect(above.ok && above.value).not.toHaveProperty('hysteresis')
    })

    it('is refused with it', () => {
      expect(storedEnergy(straight(9), straight(2))).toMatchObject({
        ok: false,
        findings: [{ code: 'too-few-points', of: 'let-down curve', count: 2, needed: 3 }],
      })
    })
  })

  it('says when the curve starts with force in the string', () => {
    expect(codes(storedEnergy(curve(7, 28, 9, (x) => 10 + 60 * x)))).toEqual(['curve-starts-with-force'])
    expect(codes(storedEnergy(curve(7, 28, 9, (x) => 3 + 67 * x)))).toEqual([])
  })

  it.each([
    { what: 'no point', points: [], finding: { code: 'too-few-points', count: 0 } },
    { what: 'two points', points: straight(2), finding: { code: 'too-few-points', count: 2 } },
    {
      what: 'the same draw twice',
      points: [...straight(4), ...straight(4).slice(-1)],
      finding: { code: 'draw-does-not-go-on', position: 5 },
    },
    {
      what: 'points in reverse',
      points: straight(4).toReversed(),
      finding: { code: 'draw-does-not-go-on', position: 2 },
    },
    { what: 'no force at all', points: curve(7, 28, 4, () => 0), finding: { code: 'outside-model' } },
    {
      what: 'a negative force',
      points: curve(7, 28, 4, (x) => -x),
      finding: { code: 'outside-model', input: 'force 2 of the force-draw curve' },
    },
    {
      what: 'a draw that is no number',
      points: curve(Number.NaN, 28, 3, (x) => x),
      finding: { code: 'outside-model', input: 'draw 1 of the force-draw curve' },
    },
    {
      what: 'a draw beyond any bow',
      points: curve(7, 60.1, 3, (x) => 70 * x),
      finding: { code: 'outside-model', input: 'draw 3 of the force-draw curve' },
    },
    {
      what: 'a force beyond any bow',
      points: curve(7, 28, 3, (x) => 401 * x),
      finding: { code: 'outside-model', input: 'force 3 of the force-draw curve' },
    },
  ])('gives no energy for $what', ({ points, finding }) => {
    const outcome = storedEnergy(points)
    expect(outcome.ok).toBe(false)
    expect(outcome.findings[0]).toMatchObject(finding)
  })

  it('answers with finite numbers or with findings, whatever it is given', () => {
    const number = fc.oneof(fc.double(), fc.double({ min: 0, max: 60 }))
    const points = fc.array(
      fc.tuple(number, number).map(([d, f]) => ({ draw: inches(d), force: poundsForce(f) })),
      { maxLength: 5 },
    )
    const sorted = points.map((all) => all.toSorted((a, b) => a.draw - b.draw))
    fc.assert(
      fc.property(fc.oneof(points, sorted), sorted, (up, down) => {
        const stored = storedEnergy(up, down)
        if (!stored.ok) return stored.findings.length > 0
        const { energy, peak, stroke, fullness, hysteresis = 0 } = stored.value
        return [...Object.values(energy), peak, stroke, fullness, hysteresis].every(Number.isFinite)
      }),
      { numRuns: 3000 },
    )
  })
})
