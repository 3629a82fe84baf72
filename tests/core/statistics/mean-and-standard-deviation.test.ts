import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mean } from '@/core/statistics/mean'
import { standardDeviation } from '@/core/statistics/standard-deviation'
import golden from '@tests/golden/strd-univariate.json'

const digitsKept = (measured: number, certified: number) =>
  measured === certified ? 15 : -Math.log10(Math.abs(measured - certified) / Math.abs(certified))

const SETS = golden.sets.map(({ name, mean: certifiedMean, sd, digits, values, alternating }) => ({
  name,
  certifiedMean,
  sd,
  digits,
  values: values ?? [alternating![0]!, ...Array.from({ length: 1000 }, (_, i) => alternating![i % 2 === 0 ? 1 : 2]!)],
}))

describe('mean and standardDeviation', () => {
  // [STRD] certified values. How many digits double arithmetic can keep of each set stands in the golden file.
  it.each(SETS)('have the certified values of $name', ({ values, certifiedMean, sd, digits }) => {
    expect(digitsKept(mean(values), certifiedMean)).toBeGreaterThanOrEqual(14)
    expect(digitsKept(standardDeviation(values), sd)).toBeGreaterThanOrEqual(digits)
  })

  it('move with the values and grow with their scale', () => {
    const values = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 2, maxLength: 30 })
    const number = fc.double({ min: -50, max: 50, noNaN: true })
    fc.assert(
      fc.property(values, number, number, (xs, shift, scale) => {
        expect(mean(xs.map((x) => x * scale + shift))).toBeCloseTo(mean(xs) * scale + shift, 8)
        expect(standardDeviation(xs.map((x) => x * scale + shift))).toBeCloseTo(
          standardDeviation(xs) * Math.abs(scale),
          8,
        )
      }),
    )
  })

  it('keep what a huge value would round away', () => expect(mean([1, 1e100, 1, -1e100])).toBe(0.5))

  it('refuse too short a list', () => {
    expect(() => mean([])).toThrow(RangeError)
    expect(() => standardDeviation([1])).toThrow(RangeError)
  })
})
