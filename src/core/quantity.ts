/**
 * The only file that knows units. A quantity is a plain number in SI, branded by its dimension, so that no unit is ever
 * implied and a mass cannot be passed for a speed. One constructor and one reader per unit people use; rounding belongs
 * to display. Exact factors: [SP811] App. B.
 */
declare const dimension: unique symbol

/**
 * A number that remembers its dimension. SI inside; only this file knows that. The brand is invariant, so that a mass and
 * a length have no common dimension to be added in.
 */
export type Quantity<D extends Dimension> = number & { readonly [dimension]: (d: D) => D }

const KG_PER_POUND = 0.453_592_37 // exact [SP811]
const KG_PER_GRAIN = KG_PER_POUND / 7000 // exact [SP811]
const STANDARD_GRAVITY = 9.806_65 // m/s², exact [SP811]
const M_PER_INCH = 0.0254 // exact [SP811]
const M_PER_FOOT = 0.3048 // exact [SP811]
const N_PER_POUND_FORCE = KG_PER_POUND * STANDARD_GRAVITY // exact [SP811]
const J_PER_FOOT_POUND = M_PER_FOOT * N_PER_POUND_FORCE // exact [SP811]
const KG_PER_SLUG = N_PER_POUND_FORCE / M_PER_FOOT // exact [SP811]

/** Every unit a record, a screen or a derivation may name: its dimension and how many SI units one of it is. */
export const UNITS = {
  kg: { dimension: 'mass', si: 1 },
  g: { dimension: 'mass', si: 1e-3 },
  gr: { dimension: 'mass', si: KG_PER_GRAIN },
  lb: { dimension: 'mass', si: KG_PER_POUND },
  m: { dimension: 'length', si: 1 },
  cm: { dimension: 'length', si: 1e-2 },
  mm: { dimension: 'length', si: 1e-3 },
  in: { dimension: 'length', si: M_PER_INCH },
  thou: { dimension: 'length', si: M_PER_INCH / 1000 }, // static spine is quoted in thousandths of an inch
  ft: { dimension: 'length', si: M_PER_FOOT },
  yd: { dimension: 'length', si: 3 * M_PER_FOOT },
  'mm²': { dimension: 'area', si: 1e-6 },
  'in²': { dimension: 'area', si: M_PER_INCH ** 2 },
  s: { dimension: 'time', si: 1 },
  min: { dimension: 'time', si: 60 },
  h: { dimension: 'time', si: 3600 },
  day: { dimension: 'time', si: 86_400 },
  'm/s': { dimension: 'speed', si: 1 },
  'ft/s': { dimension: 'speed', si: M_PER_FOOT },
  N: { dimension: 'force', si: 1 },
  lbf: { dimension: 'force', si: N_PER_POUND_FORCE },
  kgf: { dimension: 'force', si: STANDARD_GRAVITY }, // what a hanging scale in kilograms shows of a draw
  J: { dimension: 'energy', si: 1 },
  ft·lbf: { dimension: 'energy', si: J_PER_FOOT_POUND },
  'kg·m/s': { dimension: 'momentum', si: 1 },
  'slug·ft/s': { dimension: 'momentum', si: KG_PER_SLUG * M_PER_FOOT },
  'N·m²': { dimension: 'flexural rigidity', si: 1 },
  'lbf·in²': { dimension: 'flexural rigidity', si: N_PER_POUND_FORCE * M_PER_INCH ** 2 },
  Pa: { dimension: 'pressure', si: 1 },
  GPa: { dimension: 'pressure', si: 1e9 },
  mmHg: { dimension: 'pressure', si: 133.322 }, // conventional, six digits [SP811]
  'kg/m³': { dimension: 'density', si: 1 },
  'g/cm³': { dimension: 'density', si: 1000 },
  'kg/m': { dimension: 'linear density', si: 1 },
  'g/mm': { dimension: 'linear density', si: 1 },
  'g/m': { dimension: 'linear density', si: 1e-3 },
  'gr/in': { dimension: 'linear density', si: KG_PER_GRAIN / M_PER_INCH },
  'gr/mm': { dimension: 'linear density', si: KG_PER_GRAIN / 1e-3 },
  rad: { dimension: 'angle', si: 1 },
  '°': { dimension: 'angle', si: Math.PI / 180 },
  Hz: { dimension: 'frequency', si: 1 },
  '1/m': { dimension: 'wavenumber', si: 1 },
  'kg/N': { dimension: 'mass per force', si: 1 },
  'g/N': { dimension: 'mass per force', si: 1e-3 },
  'gr/lb': { dimension: 'mass per force', si: KG_PER_GRAIN / N_PER_POUND_FORCE },
  K: { dimension: 'temperature', si: 1 },
  '%': { dimension: 'ratio', si: 0.01 },
  '1': { dimension: 'ratio', si: 1 },
} as const satisfies Record<string, { dimension: string; si: number }>

export type Unit = keyof typeof UNITS
export type Dimension = (typeof UNITS)[Unit]['dimension']
/** The units a quantity of dimension D may be read in. */
export type UnitOf<D extends Dimension> = { [U in Unit]: (typeof UNITS)[U]['dimension'] extends D ? U : never }[Unit]
export type DimensionOf<U extends Unit> = (typeof UNITS)[U]['dimension']

export type Mass = Quantity<'mass'>
export type Length = Quantity<'length'>
export type Area = Quantity<'area'>
export type Time = Quantity<'time'>
export type Speed = Quantity<'speed'>
export type Force = Quantity<'force'>
export type Energy = Quantity<'energy'>
export type Momentum = Quantity<'momentum'>
export type FlexuralRigidity = Quantity<'flexural rigidity'>
export type Pressure = Quantity<'pressure'>
export type Density = Quantity<'density'>
export type LinearDensity = Quantity<'linear density'>
export type Angle = Quantity<'angle'>
export type Frequency = Quantity<'frequency'>
export type Wavenumber = Quantity<'wavenumber'>
export type MassPerForce = Quantity<'mass per force'>
/** A thermodynamic temperature. */
export type Temperature = Quantity<'temperature'>
/** A number of dimension one, such as FOC or a reserve. 15 % is stored as 0.15. */
export type Ratio = Quantity<'ratio'>

/** A quantity from a plain number in a named unit. */
export const quantity = <U extends Unit>(n: number, unit: U) => (n * UNITS[unit].si) as Quantity<DimensionOf<U>>
/** A quantity as a plain number in a named unit of its own dimension. */
export const inUnit = <D extends Dimension>(q: Quantity<D>, unit: UnitOf<D>) => q / UNITS[unit].si

export const kilograms = (n: number) => n as Mass
export const grams = (n: number) => quantity(n, 'g')
export const grains = (n: number) => quantity(n, 'gr')
export const inGrains = (m: Mass) => inUnit(m, 'gr')
export const metres = (n: number) => n as Length
export const millimetres = (n: number) => quantity(n, 'mm')
export const inMillimetres = (l: Length) => inUnit(l, 'mm')
export const inches = (n: number) => quantity(n, 'in')
export const inInches = (l: Length) => inUnit(l, 'in')
export const inDegrees = (a: Angle) => inUnit(a, '°')
export const yards = (n: number) => quantity(n, 'yd')
export const squareMetres = (n: number) => n as Area
export const seconds = (n: number) => n as Time
export const hours = (n: number) => quantity(n, 'h')
export const metresPerSecond = (n: number) => n as Speed
export const feetPerSecond = (n: number) => quantity(n, 'ft/s')
export const inFeetPerSecond = (v: Speed) => inUnit(v, 'ft/s')
export const newtons = (n: number) => n as Force
export const poundsForce = (n: number) => quantity(n, 'lbf')
export const inPoundsForce = (f: Force) => inUnit(f, 'lbf')
export const joules = (n: number) => n as Energy
export const footPounds = (n: number) => quantity(n, 'ft·lbf')
export const inFootPounds = (e: Energy) => inUnit(e, 'ft·lbf')
export const kilogramMetresPerSecond = (n: number) => n as Momentum
export const inSlugFeetPerSecond = (p: Momentum) => inUnit(p, 'slug·ft/s')
export const newtonSquareMetres = (n: number) => n as FlexuralRigidity
export const pascals = (n: number) => n as Pressure
export const gigapascals = (n: number) => quantity(n, 'GPa')
export const kilogramsPerCubicMetre = (n: number) => n as Density
export const gramsPerCubicCentimetre = (n: number) => quantity(n, 'g/cm³')
export const kilogramsPerMetre = (n: number) => n as LinearDensity
export const grainsPerInch = (n: number) => quantity(n, 'gr/in')
export const radians = (n: number) => n as Angle
export const degrees = (n: number) => quantity(n, '°')
export const hertz = (n: number) => n as Frequency
export const perMetre = (n: number) => n as Wavenumber
export const kilogramsPerNewton = (n: number) => n as MassPerForce
export const kelvins = (n: number) => n as Temperature
const ZERO_CELSIUS = 273.15 // K, exact [SP811]
export const celsius = (n: number) => (n + ZERO_CELSIUS) as Temperature
export const inCelsius = (t: Temperature) => t - ZERO_CELSIUS
export const fahrenheit = (n: number) => (((n + 459.67) * 5) / 9) as Temperature // exact [SP811]
export const inFahrenheit = (t: Temperature) => (t * 9) / 5 - 459.67 // exact [SP811]
export const ratio = (n: number) => n as Ratio
export const percent = (n: number) => quantity(n, '%')
export const inPercent = (r: Ratio) => inUnit(r, '%')

export const sum = <D extends Dimension>(...parts: readonly Quantity<D>[]) =>
  parts.reduce<number>((total, part) => total + part, 0) as Quantity<D>
export const difference = <D extends Dimension>(a: Quantity<D>, b: Quantity<D>) => (a - b) as Quantity<D>
export const scaled = <D extends Dimension>(q: Quantity<D>, factor: number) => (q * factor) as Quantity<D>
/** A number worked out in SI from quantities of one dimension (a mean, a root), as a quantity of that dimension. */
export const sameDimension = <D extends Dimension>(_like: Quantity<D> | undefined, si: number) => si as Quantity<D>
export const negated = <D extends Dimension>(q: Quantity<D>) => (0 - q) as Quantity<D>
export const magnitude = <D extends Dimension>(q: Quantity<D>) => Math.abs(q) as Quantity<D>
export const least = <D extends Dimension>(first: Quantity<D>, ...rest: readonly Quantity<D>[]) =>
  Math.min(first, ...rest) as Quantity<D>
export const greatest = <D extends Dimension>(first: Quantity<D>, ...rest: readonly Quantity<D>[]) =>
  Math.max(first, ...rest) as Quantity<D>
/** Root of the sum of squares: independent standard uncertainties of one dimension. */
export const inQuadrature = <D extends Dimension>(...parts: readonly Quantity<D>[]) =>
  Math.hypot(...parts) as Quantity<D>

/** Standard gravity, exact by definition [SP811]. */
export const STANDARD_GRAVITY_SI = STANDARD_GRAVITY
