import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leastSquares } from '@/core/numeric/least-squares'
import { CERTIFIED } from '@tests/golden/nist-strd-regression'

/** Digits that agree, as NIST counts them: −log₁₀ of the relative error. */
const digits = (found: number, certified: number) =>
  found === certified ? 15 : -Math.log10(Math.abs(found - certified) / Math.abs(certified))

describe('leastSquares', () => {
  // [STRD] linear regression, certified values; `digits` is what double precision leaves of each set's conditioning.
  it.each(CERTIFIED)(
    'agrees with the certified values of $name',
    ({ rows, y, estimates, deviations, residual, agree }) => {
      const fit = leastSquares(rows, y)
      const freedom = y.length - estimates.length
      const s = Math.sqrt(fit.residualSumOfSquares / freedom)
      estimates.forEach((certified, j) => expect(digits(fit.coefficients[j]!, certified)).toBeGreaterThan(agree))
      if (residual === 0) expect(s).toBeLessThan(1e-6)
      else expect(digits(s, residual)).toBeGreaterThan(agree)
      deviations.forEach((certified, j) =>
        expect(digits(s * Math.sqrt(fit.inverseNormal[j]![j]!), certified)).toBeGreaterThan(agree),
      )
    },
  )

  it('leaves residuals at right angles to every column', () => {
    const cell = fc.double({ min: -100, max: 100, noNaN: true })
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 4, maxLength: 20 }), (points) => {
        const xs = points.map(([x]) => x)
        fc.pre(Math.max(...xs) - Math.min(...xs) > 1)
        const fit = leastSquares(
          xs.map((x) => [1, x]),
          points.map(([, y]) => y),
        )
        const alongOne = fit.residuals.reduce((a, r) => a + r, 0)
        const alongX = fit.residuals.reduce((a, r, i) => a + r * xs[i]!, 0)
        return Math.abs(alongOne) < 1e-8 && Math.abs(alongX) < 1e-6
      }),
    )
  })

  it.each([
    { what: 'nothing', rows: [], y: [] },
    { what: 'fewer rows than columns', rows: [[1, 2]], y: [3] },
    { what: 'a value too many', rows: [[1], [2]], y: [1, 2, 3] },
    { what: 'ragged rows', rows: [[1, 2], [1], [3, 4]], y: [1, 2, 3] },
    {
      what: 'columns that depend on each other',
      rows: [
        [1, 2],
        [1, 2],
        [1, 2],
      ],
      y: [1, 2, 3],
    },
    {
      what: 'a column of zeros',
      rows: [
        [1, 0],
        [2, 0],
      ],
      y: [1, 2],
    },
  ])('refuses $what', ({ rows, y }) => {
    expect(() => leastSquares(rows, y)).toThrow(RangeError)
  })
})
