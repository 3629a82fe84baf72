/** The parts of a working in words: each number in its unit and in the other system's, and where it came from. */
import { UNITS } from '../../core/quantity'
import type { Origin, Term } from '../../core/outcome'
import type { SourceKey } from '../../core/sources'
import { SOURCES } from '../../core/sources'
import type { Unit } from '../../core/quantity'
import { showSignificant } from './format'
import { counterpart } from './unit-systems'
import { unitSuffix } from './unit-words'

const ORIGIN: Record<Origin, string> = {
  given: 'given',
  read: 'read',
  answered: 'told on the call',
  catalogue: 'catalogue',
  'lot history': 'weighed before, same lot',
  'shop rule': 'the shop’s rule',
  assumed: 'assumed',
  computed: 'computed',
  constant: 'constant',
}

/** `read, lot T-31`. */
export const originWords = (term: Term): string =>
  term.ref === undefined ? ORIGIN[term.origin] : `${ORIGIN[term.origin]}, ${refWords(term.ref)}`

const isSource = (ref: string): ref is SourceKey => Object.hasOwn(SOURCES, ref)
const refWords = (ref: string): string => (isSource(ref) ? SOURCES[ref].title : ref)

/** `28.5 in` */
export const termValue = (term: Term): string => showSignificant(term.value) + unitSuffix(term.unit)

/** The same in the other system, `723.9 mm`; nothing where both systems use one unit. */
export function otherValue(term: Term): string | undefined {
  const other = counterpart(term.unit)
  if (other === undefined || other === '°C' || other === '°F') return undefined
  return otherIn(term, other)
}

const otherIn = ({ value, unit }: Term, other: Unit): string =>
  showSignificant((value * UNITS[unit].si) / UNITS[other].si) + unitSuffix(other)

/** The sources in full, with what is not a publication said as such. */
export const sourceWords = (keys: readonly SourceKey[]): string[] =>
  keys.map((key) => (SOURCES[key].status === 'M' ? `${SOURCES[key].title} (from memory)` : SOURCES[key].title))
