/** In what a version differs from the others that were made apart from it, field by field. */
import { showPlain } from './format'

const UNITS: Readonly<Record<string, string>> = {
  Gr: 'gr',
  In: 'in',
  Mm: 'mm',
  Lb: 'lb',
  Cents: 'cents',
  Days: 'days',
  C: '°C',
  H: 'h',
  Deg: '°',
}

/** *toleranceGr* is said *tolerance, gr*. */
function fieldWords(field: string): string {
  const parts = field.split(/(?=[A-Z])/)
  const unit = UNITS[parts.at(-1) ?? '']
  const words = (unit === undefined ? parts : parts.slice(0, -1)).join(' ').toLowerCase()
  return unit === undefined ? words : `${words}, ${unit}`
}

function valueWords(value: unknown): string {
  if (value === undefined || value === null) return 'not said'
  if (typeof value === 'number') return showPlain(value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return value === '' ? 'empty' : value
  return Array.isArray(value) ? `${value.length} in the list` : 'set otherwise'
}

export function apartWords(
  fields: Readonly<Record<string, unknown>>,
  others: readonly Readonly<Record<string, unknown>>[],
): string {
  const names = [...new Set([fields, ...others].flatMap((each) => Object.keys(each)))]
  const differing = names.filter((name) =>
    others.some((other) => JSON.stringify(other[name]) !== JSON.stringify(fields[name])),
  )
  return differing.length === 0
    ? 'It says the same as the other.'
    : differing.map((name) => `${fieldWords(name)}: ${valueWords(fields[name])}`).join('; ')
}
