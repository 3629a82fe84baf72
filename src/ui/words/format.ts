/**
 * The one formatter of numbers. It rounds, and nothing before it does. Digits are grouped from 10 000 on, by a narrow
 * space and never by a comma, since a typed comma is a decimal mark here. What is shown can be typed back.
 */
import { inUnit } from '../../core/quantity'
import type { Dimension, Quantity, Unit, UnitOf } from '../../core/quantity'
import type { Estimate } from '../../core/outcome'
import { unitSuffix } from './unit-words'

const MINUS = '\u2212'
const NARROW_SPACE = '\u202f'
const FINEST = 12 // decimals

const formats = new Map<number, Intl.NumberFormat>()
function formatOf(decimals: number): Intl.NumberFormat {
  const places = Math.min(FINEST, Math.max(0, Math.trunc(decimals) || 0))
  const kept = formats.get(places)
  if (kept !== undefined) return kept
  const made = new Intl.NumberFormat('en', {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
    signDisplay: 'negative',
    useGrouping: 'min2',
  })
  formats.set(places, made)
  return made
}

/** `1234.5`, `−0.3`, `12 345.0`. A number that is none is said in words; a finding's input may be one. */
export function showNumber(n: number, decimals: number): string {
  if (Number.isNaN(n)) return 'no number'
  if (!Number.isFinite(n)) return 'no finite number'
  return formatOf(decimals).format(n).replaceAll(',', NARROW_SPACE).replace('-', MINUS)
}

/** As short as it can be said, to at most so many decimals: `28.5`, `150`. For what stands in a field. */
export function showPlain(n: number, most = 6): string {
  const shown = showNumber(n, most)
  return shown.includes('.') ? shown.replace(/\.?0+$/, '') : shown
}

/** With its sign: `+1.2`, `−0.3`, and `0.0` for what rounds to nothing. */
export function showSigned(n: number, decimals: number): string {
  const shown = showNumber(n, decimals)
  return n > 0 && /[1-9]/.test(shown) ? `+${shown}` : shown
}

/** A number and its unit: `825.0 gr`, `15.5 %`, `3°`. */
export const showIn = (n: number, unit: Unit, decimals: number): string => showNumber(n, decimals) + unitSuffix(unit)

/** A quantity in a unit of its own dimension: `825.0 gr`. */
export const show = <D extends Dimension>(q: Quantity<D>, unit: UnitOf<D>, decimals: number): string =>
  showIn(inUnit(q, unit), unit, decimals)

/** Two ends with one unit: `780 … 900 gr`, in a sentence `780 to 900 gr`. Ends that round alike are one number. */
export function showRange<D extends Dimension>(
  low: Quantity<D>,
  high: Quantity<D>,
  unit: UnitOf<D>,
  decimals: number,
  joiner: '…' | 'to' = '…',
): string {
  const [from, to] = [showNumber(inUnit(low, unit), decimals), showNumber(inUnit(high, unit), decimals)]
  return (from === to ? from : `${from} ${joiner} ${to}`) + unitSuffix(unit)
}

/** Half the width of a band when it is even, `± 2.1`; both its ends when it is not, `201.8 … 206.4`. No unit. */
export function showBand<D extends Dimension>(band: Estimate<Quantity<D>>, unit: UnitOf<D>, decimals: number): string {
  const [low, value, high] = [inUnit(band.low, unit), inUnit(band.value, unit), inUnit(band.high, unit)]
  const [below, above] = [showNumber(value - low, decimals), showNumber(high - value, decimals)]
  return below === above ? `± ${below}` : `${showNumber(low, decimals)} … ${showNumber(high, decimals)}`
}

/** To so many significant digits, without trailing noughts: for workings, where no decimals are agreed. */
export function showSignificant(n: number, digits = 6): string {
  if (!Number.isFinite(n) || n === 0) return showNumber(n, 0)
  const size = Math.floor(Math.log10(Math.abs(n)))
  if (size < -6 || size > 9) return `${showSignificant(n / 10 ** size, digits)} × 10^${showNumber(size, 0)}`
  return showPlain(n, Math.max(0, digits - 1 - size))
}

/** `1 arrow`, `6 arrows`. */
export const counted = (n: number, one: string, many = `${one}s`): string =>
  `${showNumber(n, 0)} ${n === 1 ? one : many}`
