import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { feetPerSecond, footPounds, grains, inches, percent, poundsForce, ratio, UNITS } from '@/core/quantity'
import type { Unit } from '@/core/quantity'
import { parseQuantity } from '@/domain/entry/parse-quantity'
import { counted, show, showBand, showNumber, showRange, showSignificant, showSigned } from '@/ui/words/format'
import { counterpart, inSystem } from '@/ui/words/unit-systems'

const band = (low: number, value: number, high: number) => ({
  low: feetPerSecond(low),
  value: feetPerSecond(value),
  high: feetPerSecond(high),
  sd: feetPerSecond((high - low) / 4),
})

describe('the formatter', () => {
  it.each([
    [650, 1, '650.0'],
    [1200.05, 0, '1200'],
    [9999.96, 1, '10\u202f000.0'],
    [12345.678, 2, '12\u202f345.68'],
    [1234567, 0, '1\u202f234\u202f567'],
    [-0.3, 1, '−0.3'],
    [-0.04, 1, '0.0'],
    [0, 2, '0.00'],
    [Number.NaN, 1, 'no number'],
    [Number.POSITIVE_INFINITY, 1, 'no finite number'],
  ])('shows %d to %d decimals as %s', (n, decimals, shown) => {
    expect(showNumber(n, decimals)).toBe(shown)
  })

  it('signs a difference, and not what rounds to nothing', () => {
    expect([1.24, -1.24, 0.04, -0.04, 0].map((n) => showSigned(n, 1))).toEqual(['+1.2', '−1.2', '0.0', '0.0', '0.0'])
  })

  it('writes the unit the trade writes', () => {
    expect(show(grains(825), 'gr', 1)).toBe('825.0 gr')
    expect(show(poundsForce(72), 'lbf', 0)).toBe('72 lb')
    expect(show(footPounds(76.9), 'ft·lbf', 1)).toBe('76.9 ft·lbf')
    expect(show(percent(15.52), '%', 1)).toBe('15.5 %')
    expect(show(ratio(1.07), '1', 2)).toBe('1.07')
    expect(show(inches(0.34), 'thou', 0)).toBe('340 thou')
  })

  it('shows a range with one unit, and one number when both ends round alike', () => {
    expect(showRange(grains(780), grains(900), 'gr', 0)).toBe('780 … 900 gr')
    expect(showRange(grains(780), grains(900), 'gr', 0, 'to')).toBe('780 to 900 gr')
    expect(showRange(grains(780.1), grains(780.2), 'gr', 0)).toBe('780 gr')
  })

  it('shows an even band as a half width and an uneven one by its ends', () => {
    expect(showBand(band(202.7, 204.8, 206.9), 'ft/s', 1)).toBe('± 2.1')
    expect(showBand(band(201.8, 204.8, 206.4), 'ft/s', 1)).toBe('201.8 … 206.4')
  })

  it.each([
    [0.721522, 4, '0.7215'],
    [450436.68, 6, '450\u202f437'],
    [28.5, 6, '28.5'],
    [100, 6, '100'],
    [8.78068e-4, 6, '0.000878068'],
    [1.5e-8, 3, '1.5 × 10^−8'],
    [-2e12, 3, '−2 × 10^12'],
    [0, 6, '0'],
  ])('shows %d to %d significant digits as %s', (n, digits, shown) => {
    expect(showSignificant(n, digits)).toBe(shown)
  })

  it('counts', () => {
    expect([counted(1, 'arrow'), counted(6, 'arrow'), counted(0, 'pass', 'passes')]).toEqual([
      '1 arrow',
      '6 arrows',
      '0 passes',
    ])
  })

  it('shows what can be typed back as the same number', () => {
    const asked = { unit: 'gr', min: -1e6, max: 1e6 } as const
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 4 }), (n, decimals) => {
        const shown = showNumber(n, decimals)
        fc.pre(Math.abs(n) < 1e6 - 1)
        const entry = parseQuantity(`${shown} gr`, asked)
        expect(entry.kind).toBe('number')
        if (entry.kind === 'number') {
          expect(Math.abs(entry.value - n)).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-9) + 1e-10)
          expect(showNumber(entry.value, decimals)).toBe(shown)
        }
      }),
      { numRuns: 2000 },
    )
  })
})

describe('trade and metric', () => {
  it('keep the dimension and about the fineness', () => {
    for (const unit of Object.keys(UNITS) as Unit[]) {
      const metric = inSystem<Unit>(unit, 2, 'metric')
      expect(UNITS[metric.unit].dimension).toBe(UNITS[unit].dimension)
      const finer = (UNITS[metric.unit].si * 10 ** -metric.decimals) / (UNITS[unit].si * 1e-2)
      expect(finer, unit).toBeGreaterThan(0.05)
      expect(finer, unit).toBeLessThan(4)
    }
  })

  it('show what has no stand-in as it is, and lead back from the stand-in', () => {
    expect(inSystem('°', 0, 'metric')).toEqual({ unit: '°', decimals: 0 })
    expect(inSystem('in', 2, 'trade')).toEqual({ unit: 'in', decimals: 2 })
    expect([counterpart('gr'), counterpart('g'), counterpart('ft·lbf'), counterpart('%')]).toEqual([
      'g',
      'gr',
      'J',
      undefined,
    ])
  })
})
