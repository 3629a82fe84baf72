import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flatFire } from '@/core/flight/flat-fire'
import { feetPerSecond, inFeetPerSecond, metres, perMetre, yards } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const K = perMetre(8.78068e-4)

describe('flatFire', () => {
  // [MECHANICS] v = v₀·e^(−kx) for the 650 gr arrow at 250 ft/s, computed twice by hand.
  it.each([
    [20, 246.018],
    [40, 242.099],
    [60, 238.242],
  ])('leaves at %d yd %d ft/s of 250', (yd, fps) => {
    expect(Math.abs(inFeetPerSecond(answer(flatFire(feetPerSecond(250), K, yards(yd))).speed) - fps)).toBeLessThan(
      0.0005,
    )
  })

  it('keeps 93.779 % of the energy at 40 yd', () => {
    expect(Math.abs(answer(flatFire(feetPerSecond(250), K, yards(40))).energyKept - 0.93779)).toBeLessThan(0.000005)
  })

  it('is uniform in vacuum, and comes near it as the air gets thin', () => {
    const vacuum = answer(flatFire(feetPerSecond(250), perMetre(0), yards(60)))
    expect(vacuum.speed).toBe(feetPerSecond(250))
    expect(vacuum.energyKept).toBe(1)
    expect(vacuum.time).toBeCloseTo(yards(60) / feetPerSecond(250), 12)
    expect(answer(flatFire(feetPerSecond(250), perMetre(1e-15), yards(60))).time).toBeCloseTo(vacuum.time, 10)
  })

  it('goes on from where it was: two ranges in a row are one', () => {
    const x = fc.double({ min: 0, max: 200, noNaN: true })
    fc.assert(
      fc.property(x, x, fc.double({ min: 0, max: 0.01, noNaN: true }), (a, b, k) => {
        const first = answer(flatFire(feetPerSecond(250), perMetre(k), metres(a)))
        const then = answer(flatFire(first.speed, perMetre(k), metres(b)))
        const once = answer(flatFire(feetPerSecond(250), perMetre(k), metres(a + b)))
        return (
          Math.abs(then.speed / once.speed - 1) < 1e-9 &&
          Math.abs(first.time + then.time - once.time) < 1e-9 * once.time + 1e-12
        )
      }),
    )
  })

  it('says when the range is beyond the flight', () => {
    expect(flatFire(feetPerSecond(250), perMetre(0.1), metres(100.1))).toMatchObject({
      ok: false,
      findings: [{ code: 'range-beyond-flight' }],
    })
    expect(flatFire(feetPerSecond(250), perMetre(0.1), metres(99.9)).ok).toBe(true)
  })

  it.each([
    { fps: 9.9, k: 0, m: 10, input: 'launch speed' },
    { fps: 1000.1, k: 0, m: 10, input: 'launch speed' },
    { fps: 250, k: -1e-9, m: 10, input: 'loss of speed with distance' },
    { fps: 250, k: 1.001, m: 10, input: 'loss of speed with distance' },
    { fps: 250, k: 0, m: -0.1, input: 'range' },
    { fps: 250, k: 0, m: 500.1, input: 'range' },
    { fps: Number.NaN, k: 0, m: 10, input: 'launch speed' },
  ])('gives nothing at $fps ft/s, $k /m, $m m', ({ fps, k, m, input }) => {
    expect(flatFire(feetPerSecond(fps), perMetre(k), metres(m))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
