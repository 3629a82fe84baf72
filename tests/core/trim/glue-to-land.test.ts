import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { grains, inGrains } from '@/core/quantity'
import { glueToLand, type JointState } from '@/core/trim/glue-to-land'
import { answer } from '@tests/support/answer'

/** A post and a collar: 1.8 ± 0.4 and 0.8 ± 0.25 gr, common practice, no source. */
const joint = (needed: number, on?: number, change: Partial<JointState> = {}): JointState => ({
  needed: grains(needed),
  on: on === undefined ? undefined : grains(on),
  usual: { value: grains(2.6), sd: grains(Math.hypot(0.4, 0.25)) },
  tolerance: grains(0.5),
  ...change,
})
const next = (...at: Parameters<typeof joint>) => answer(glueToLand(joint(...at))).next

describe('glueToLand', () => {
  it('spreads, then wipes what is over and adds what is short, until half a touch is left', () => {
    expect(next(2.6)).toBe('spread')
    expect(next(2.6, 3.1)).toBe('wipe')
    expect(next(2.6, 2.3)).toBe('add')
    expect(next(2.6, 2.69)).toBe('done')
    expect(next(2.6, 2.51)).toBe('done')
    expect(next(2.6, 2.71)).toBe('wipe')
  })

  it('questions an arrow that no joint of the shop brings onto its number, wet or dry', () => {
    // 2.6 ± 1.96·0.4717 is 1.675 to 3.525; half a grain beyond either end still lands.
    expect(next(4.02)).toBe('spread')
    expect(next(4.03)).toBe('question')
    expect(next(1.17, 2)).toBe('question')
    expect(next(1.18, 2)).toBe('wipe')
    expect(next(-3)).toBe('question')
  })

  it('neither starves a bond nor heaps it up to land', () => {
    const { aim, least, most } = answer(glueToLand(joint(1.3, 1.9)))
    expect(inGrains(least)).toBeCloseTo(2.6 - 1.959_964 * Math.hypot(0.4, 0.25), 9)
    expect(inGrains(most)).toBeCloseTo(2.6 + 1.959_964 * Math.hypot(0.4, 0.25), 9)
    expect(aim).toBe(least)
    expect(inGrains(answer(glueToLand(joint(0.1, 0, { usual: { value: grains(0.1), sd: grains(1) } }))).least)).toBe(0)
    // At the least that the joint may have and inside the tolerance: nothing more is done.
    expect(next(1.3, 1.7)).toBe('done')
    // As little as is left to do is done where it is what lands.
    expect(next(1.2, 1.73)).toBe('wipe')
  })

  it('tells the chance that an arrow lands when its glue is left to chance', () => {
    // P(|z| ≤ 0.5/0.4717) = 2Φ(1.05999) − 1 = 0.71085, normal table
    expect(answer(glueToLand(joint(2.6))).chanceUnweighed).toBeCloseTo(0.711, 3)
    expect(answer(glueToLand(joint(3.4))).chanceUnweighed).toBeLessThan(0.3)
  })

  it('never moves a joint out of its band and, where it does not question, ends inside the tolerance', () => {
    const any = fc.double({ min: -2, max: 8, noNaN: true })
    fc.assert(
      fc.property(any, any, (needed, on) => {
        const { next: advice, aim, least, most } = answer(glueToLand(joint(needed, on)))
        expect(aim).toBeGreaterThanOrEqual(least)
        expect(aim).toBeLessThanOrEqual(most)
        if (advice !== 'question') expect(Math.abs(inGrains(aim) - needed)).toBeLessThanOrEqual(0.5 + 1e-9)
        if (advice === 'done') expect(Math.abs(on - needed)).toBeLessThanOrEqual(0.5 + 1e-9)
      }),
    )
  })

  it.each([
    ['glue needed', joint(NaN)],
    ['glue on the joint', joint(1, Infinity)],
    ['usual glue', joint(1, 1, { usual: { value: grains(-1), sd: grains(1) } })],
    ['spread of the usual glue', joint(1, 1, { usual: { value: grains(1), sd: grains(0) } })],
    ['tolerance', joint(1, 1, { tolerance: grains(-1) })],
  ])('names a %s it cannot take', (input, given) => {
    expect(glueToLand(given)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
