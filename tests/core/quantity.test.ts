import fc from 'fast-check'
import { type MathNumericType, all, bignumber, create } from 'mathjs'
import { describe, expect, it } from 'vitest'
import * as quantities from '@/core/quantity'
import { UNITS, type Unit, inUnit, quantity } from '@/core/quantity'

const math = create(all!, { number: 'BigNumber', precision: 40 })
math.createUnit('slugMass', '1 lbf s^2 / ft')

/** What mathjs calls each unit; the right side of the conversion is SI. Its factors are exact where [SP811]'s are. */
const IN_MATHJS: Readonly<Record<Unit, readonly [name: string, si: string]>> = {
  kg: ['kg', 'kg'],
  g: ['g', 'kg'],
  gr: ['grain', 'kg'],
  lb: ['lbm', 'kg'],
  m: ['m', 'm'],
  cm: ['cm', 'm'],
  mm: ['mm', 'm'],
  in: ['inch', 'm'],
  thou: ['mil', 'm'],
  ft: ['ft', 'm'],
  yd: ['yard', 'm'],
  'mm²': ['mm^2', 'm^2'],
  'in²': ['inch^2', 'm^2'],
  s: ['s', 's'],
  min: ['minute', 's'],
  h: ['hour', 's'],
  day: ['day', 's'],
  'm/s': ['m/s', 'm/s'],
  'ft/s': ['ft/s', 'm/s'],
  N: ['N', 'N'],
  lbf: ['lbf', 'N'],
  kgf: ['kgf', 'N'],
  J: ['J', 'J'],
  ft·lbf: ['ft lbf', 'J'],
  'kg·m/s': ['kg m/s', 'kg m/s'],
  'slug·ft/s': ['slugMass ft/s', 'kg m/s'],
  'N·m²': ['N m^2', 'N m^2'],
  'lbf·in²': ['lbf inch^2', 'N m^2'],
  Pa: ['Pa', 'Pa'],
  GPa: ['GPa', 'Pa'],
  mmHg: ['mmHg', 'Pa'],
  'kg/m³': ['kg/m^3', 'kg/m^3'],
  'g/cm³': ['g/cm^3', 'kg/m^3'],
  'kg/m': ['kg/m', 'kg/m'],
  'g/mm': ['g/mm', 'kg/m'],
  'g/m': ['g/m', 'kg/m'],
  'gr/in': ['grain/inch', 'kg/m'],
  'gr/mm': ['grain/mm', 'kg/m'],
  rad: ['rad', 'rad'],
  '°': ['deg', 'rad'],
  Hz: ['Hz', 'Hz'],
  '1/m': ['m^-1', 'm^-1'],
  'kg/N': ['kg/N', 'kg/N'],
  'g/N': ['g/N', 'kg/N'],
  'gr/lb': ['grain/lbf', 'kg/N'],
  K: ['K', 'K'],
  '%': ['0.01', ''],
  '1': ['1', ''],
}
const factor = (unit: Unit): MathNumericType => {
  const [name, si] = IN_MATHJS[unit]
  return si === '' ? bignumber(name) : math.unit(bignumber(1), name).toNumeric(si)
}
/** mathjs keeps a millimetre of mercury as 133.3223684 Pa (a 760th of an atmosphere); [SP811] prints 133.322. */
const tolerance = (unit: Unit) => (unit === 'mmHg' ? 3e-6 : 4e-16)

describe('quantities', () => {
  it.each(Object.keys(UNITS) as Unit[])('agree with mathjs on how much one %s is', (unit) => {
    expect(Math.abs(UNITS[unit].si / Number(factor(unit)) - 1)).toBeLessThanOrEqual(tolerance(unit))
  })

  // [SP811] Appendix B.8, exact factors.
  it.each([
    { name: 'a grain', found: quantity(1, 'gr'), exact: 64.79891e-6 },
    { name: 'seven thousand grains', found: quantity(7000, 'gr'), exact: 0.45359237 },
    { name: 'an inch', found: quantity(1, 'in'), exact: 0.0254 },
    { name: 'a pound-force', found: quantity(1, 'lbf'), exact: 4.4482216152605 },
    { name: 'a foot pound-force', found: quantity(1, 'ft·lbf'), exact: 1.3558179483314 },
  ])('take $name as $exact in SI', ({ found, exact }) => {
    expect(Math.abs(found / exact - 1)).toBeLessThan(1e-14)
  })

  it.each(Object.keys(UNITS) as Unit[])('give back a number put in as %s', (unit) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.boolean(), (size, isNegative) => {
        const n = isNegative ? -size : size
        const back = inUnit(quantity(n, unit), unit as never)
        return Math.abs(back - n) <= Math.abs(n) * 4e-16
      }),
    )
  })

  // Each constructor's name against the unit it makes, so that none is wired to a neighbour.
  it.each([
    { name: 'kilograms', of: quantities.kilograms, unit: 'kg' },
    { name: 'grams', of: quantities.grams, unit: 'g' },
    { name: 'grains', of: quantities.grains, unit: 'gr' },
    { name: 'metres', of: quantities.metres, unit: 'm' },
    { name: 'millimetres', of: quantities.millimetres, unit: 'mm' },
    { name: 'inches', of: quantities.inches, unit: 'in' },
    { name: 'yards', of: quantities.yards, unit: 'yd' },
    { name: 'seconds', of: quantities.seconds, unit: 's' },
    { name: 'hours', of: quantities.hours, unit: 'h' },
    { name: 'metresPerSecond', of: quantities.metresPerSecond, unit: 'm/s' },
    { name: 'feetPerSecond', of: quantities.feetPerSecond, unit: 'ft/s' },
    { name: 'newtons', of: quantities.newtons, unit: 'N' },
    { name: 'poundsForce', of: quantities.poundsForce, unit: 'lbf' },
    { name: 'joules', of: quantities.joules, unit: 'J' },
    { name: 'footPounds', of: quantities.footPounds, unit: 'ft·lbf' },
    { name: 'kilogramMetresPerSecond', of: quantities.kilogramMetresPerSecond, unit: 'kg·m/s' },
    { name: 'newtonSquareMetres', of: quantities.newtonSquareMetres, unit: 'N·m²' },
    { name: 'pascals', of: quantities.pascals, unit: 'Pa' },
    { name: 'gigapascals', of: quantities.gigapascals, unit: 'GPa' },
    { name: 'kilogramsPerCubicMetre', of: quantities.kilogramsPerCubicMetre, unit: 'kg/m³' },
    { name: 'gramsPerCubicCentimetre', of: quantities.gramsPerCubicCentimetre, unit: 'g/cm³' },
    { name: 'kilogramsPerMetre', of: quantities.kilogramsPerMetre, unit: 'kg/m' },
    { name: 'grainsPerInch', of: quantities.grainsPerInch, unit: 'gr/in' },
    { name: 'radians', of: quantities.radians, unit: 'rad' },
    { name: 'degrees', of: quantities.degrees, unit: '°' },
    { name: 'hertz', of: quantities.hertz, unit: 'Hz' },
    { name: 'perMetre', of: quantities.perMetre, unit: '1/m' },
    { name: 'kilogramsPerNewton', of: quantities.kilogramsPerNewton, unit: 'kg/N' },
    { name: 'kelvins', of: quantities.kelvins, unit: 'K' },
    { name: 'squareMetres', of: quantities.squareMetres, unit: undefined },
    { name: 'percent', of: quantities.percent, unit: '%' },
    { name: 'ratio', of: quantities.ratio, unit: '1' },
  ] as const)('make $name in $unit', ({ of, unit }) => {
    expect(of(3)).toBe(unit ? quantity(3, unit) : 3)
  })

  it.each([
    { name: 'inGrains', of: quantities.inGrains, unit: 'gr' },
    { name: 'inMillimetres', of: quantities.inMillimetres, unit: 'mm' },
    { name: 'inInches', of: quantities.inInches, unit: 'in' },
    { name: 'inFeetPerSecond', of: quantities.inFeetPerSecond, unit: 'ft/s' },
    { name: 'inPoundsForce', of: quantities.inPoundsForce, unit: 'lbf' },
    { name: 'inFootPounds', of: quantities.inFootPounds, unit: 'ft·lbf' },
    { name: 'inSlugFeetPerSecond', of: quantities.inSlugFeetPerSecond, unit: 'slug·ft/s' },
    { name: 'inPercent', of: quantities.inPercent, unit: '%' },
  ] as const)('read $name in $unit', ({ of, unit }) => {
    expect((of as (q: number) => number)(quantity(3, unit))).toBeCloseTo(3, 12)
  })

  it('count Celsius from 273.15 K', () => {
    expect(quantities.celsius(20)).toBeCloseTo(293.15, 10)
    expect(quantities.inCelsius(quantities.kelvins(0))).toBe(-273.15)
  })

  // [SP811] B.8: t/°C = (t/°F − 32)/1.8. The two scales meet at −40; water boils at 212 °F.
  it('count Fahrenheit so that it meets Celsius at 40 below', () => {
    expect(quantities.fahrenheit(-40)).toBeCloseTo(quantities.celsius(-40), 10)
    expect(quantities.fahrenheit(212)).toBeCloseTo(quantities.celsius(100), 10)
    expect(quantities.inFahrenheit(quantities.celsius(0))).toBeCloseTo(32, 10)
    for (const f of [-40, 0, 68, 212]) expect(quantities.inFahrenheit(quantities.fahrenheit(f))).toBeCloseTo(f, 10)
  })

  it('lend a number the dimension of another', () => {
    expect(quantities.sameDimension(quantities.grains(1), 0.05)).toBe(0.05)
  })

  it('add, subtract and compare within one dimension', () => {
    const { grains, sum, difference, scaled, negated, magnitude, least, greatest, inQuadrature } = quantities
    expect(sum(grains(1), grains(2), grains(3))).toBeCloseTo(grains(6), 18)
    expect(sum()).toBe(0)
    expect(difference(grains(5), grains(2))).toBeCloseTo(grains(3), 18)
    expect(scaled(grains(5), 2)).toBeCloseTo(grains(10), 18)
    expect(negated(grains(5))).toBe(grains(-5))
    expect(Object.is(negated(grains(0)), 0)).toBe(true)
    expect(magnitude(grains(-5))).toBe(grains(5))
    expect(least(grains(5), grains(2))).toBe(grains(2))
    expect(greatest(grains(5), grains(2))).toBe(grains(5))
    expect(inQuadrature(grains(3), grains(4))).toBeCloseTo(grains(5), 18)
  })
})
