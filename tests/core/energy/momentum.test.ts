import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { kineticEnergy } from '@/core/energy/kinetic-energy'
import { momentum } from '@/core/energy/momentum'
import { feetPerSecond, grains, inSlugFeetPerSecond } from '@/core/quantity'
import { answer } from '@tests/support/answer'

describe('momentum', () => {
  // [SP811] factors, computed by hand.
  it('is 0.721522 slug·ft/s, 3.209490 kg·m/s, for 650 gr at 250 ft/s', () => {
    const p = answer(momentum(grains(650), feetPerSecond(250)))
    expect(Math.abs(inSlugFeetPerSecond(p) - 0.721522)).toBeLessThan(0.0000005)
    expect(Math.abs(p - 3.20949)).toBeLessThan(0.0000005)
  })

  it('has the divisor 225 218.34 in grains, ft/s and slug·ft/s', () => {
    expect(1 / inSlugFeetPerSecond(answer(momentum(grains(1), feetPerSecond(1))))).toBeCloseTo(225_218.34, 2)
  })

  it('is twice the kinetic energy over the speed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 1, max: 900, noNaN: true }),
        (gr, fps) => {
          const v = feetPerSecond(fps)
          const p = answer(momentum(grains(gr), v))
          return Math.abs((2 * answer(kineticEnergy(grains(gr), v))) / v / p - 1) < 1e-12
        },
      ),
    )
  })

  it.each([
    { gr: 0, fps: 250, input: 'arrow weight' },
    { gr: Number.NEGATIVE_INFINITY, fps: 250, input: 'arrow weight' },
    { gr: 650, fps: Number.NaN, input: 'arrow speed' },
    { gr: 650, fps: 2001, input: 'arrow speed' },
  ])('gives no momentum for $gr gr at $fps ft/s', ({ gr, fps, input }) => {
    expect(momentum(grains(gr), feetPerSecond(fps))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
