import { describe, expect, it } from 'vitest'
import { grains } from '@/core/quantity'
import { capability } from '@/core/statistics/capability'
import { answer } from '@tests/support/answer'

// [EHANDBOOK] 6.1.6, the example of limits 8 and 20, mean 16, standard deviation 2; the count is ours (M).
const EXAMPLE = { mean: grains(16), sd: grains(2), count: 6, lower: grains(8), upper: grains(20) }

describe('capability', () => {
  // [EHANDBOOK] 6.1.6 (M): Cp = 1.0, Cpk = 0.6667; Cpm = 12/(6·√(2² + 2²)) = 0.7071 with the target 14 in the middle.
  it('has the published example', () => {
    const { cp, cpk, cpm } = answer(capability(EXAMPLE, 'gr'))
    expect(cp).toBeCloseTo(1, 12)
    expect(Math.abs(cpk - 0.6667)).toBeLessThanOrEqual(0.00005)
    expect(Math.abs(cpm - 0.7071)).toBeLessThanOrEqual(0.00005)
  })

  it('counts a target that is not the middle', () => {
    expect(answer(capability({ ...EXAMPLE, target: grains(16) }, 'gr')).cpm).toBeCloseTo(1, 12)
  })

  it('is the same whichever side the set leans to, and is cp when it leans to neither', () => {
    const light = answer(capability({ ...EXAMPLE, mean: grains(12) }, 'gr'))
    expect(light.cpk).toBeCloseTo(answer(capability(EXAMPLE, 'gr')).cpk, 12)
    const centred = answer(capability({ ...EXAMPLE, mean: grains(14) }, 'gr'))
    expect(centred.cpk).toBeCloseTo(centred.cp, 12)
    expect(centred.cpm).toBeCloseTo(centred.cp, 12)
  })

  // [EHANDBOOK] 6.1.6 (M): Cpk ± z·√(1/9n + Cpk²/2(n − 1)); by hand for n = 6: 1.96·√(1/54 + 0.4444/10) = 0.49180.
  it('gives a band that narrows with the count', () => {
    const six = answer(capability(EXAMPLE, 'gr'))
    expect(six.cpkHigh - six.cpkLow).toBeCloseTo(2 * 0.491_8, 4)
    const sixty = answer(capability({ ...EXAMPLE, count: 60 }, 'gr'))
    expect(sixty.cpkHigh - sixty.cpkLow).toBeLessThan(six.cpkHigh - six.cpkLow)
  })

  it.each([
    ['no spread', { sd: grains(0) }, 'no-spread', undefined],
    ['a negative spread', { sd: grains(-1) }, 'outside-model', 'standard deviation'],
    ['one arrow', { count: 1 }, 'outside-model', 'number of values'],
    ['limits the wrong way round', { lower: grains(30) }, 'outside-model', 'upper less lower limit'],
    ['equal limits', { lower: grains(20) }, 'outside-model', 'upper less lower limit'],
    ['no mean', { mean: grains(NaN) }, 'outside-model', 'value'],
  ])('gives nothing for %s', (_, change, code, input) => {
    const outcome = capability({ ...EXAMPLE, ...change }, 'gr')
    expect(outcome).toMatchObject({ ok: false, findings: [{ code, ...(input && { input }) }] })
  })
})
