/**
 * A table of parts, row by row: what each row would add, or what is wrong with it. Nothing is written here; what is added
 * is added as one command.
 */
import type { EntryProblem } from '../entry/parse-quantity'
import { parseQuantity } from '../entry/parse-quantity'
import type { EntryUnit } from '../entry/unit-names'
import { canonical } from '../records/canonical'
import type { CsvRow } from '../records/read-csv'
import type { PartProblem } from './check-part'
import { checkPart, shaftWeightProblem } from './check-part'
import { PART_KINDS } from './part'
import type { Part, PartKind } from './part'
import type { PartEntries, PartField } from './part-fields'
import { PART_FIELDS } from './part-fields'
import type { ColumnUse } from './table-columns'
import { fieldOf } from './table-columns'

export type RowProblem =
  | { readonly code: 'entry'; readonly field: PartField; readonly text: string; readonly problem: EntryProblem }
  | {
      readonly code: 'no-choice'
      readonly field: PartField
      readonly text: string
      readonly options: readonly string[]
    }
  | { readonly code: 'kind'; readonly text: string }
  | { readonly code: 'price' | 'pieces'; readonly text: string; readonly problem: EntryProblem }
  | { readonly code: 'part'; readonly problem: PartProblem }
  /** The same kind and name stand on another line of the file. */
  | { readonly code: 'twice'; readonly line: number }
  /** The shelf has it with other figures. */
  | { readonly code: 'differs' }

export type TableRow =
  | {
      readonly kind: 'new'
      readonly line: number
      readonly part: Part
      readonly lot: { readonly code: string; readonly pieces: number } | undefined
    }
  | { readonly kind: 'there'; readonly line: number; readonly name: string }
  | {
      readonly kind: 'problems'
      readonly line: number
      readonly name: string
      readonly problems: readonly [RowProblem, ...RowProblem[]]
    }

export interface TableAsked {
  readonly columns: readonly ColumnUse[]
  /** For rows whose kind no column says. */
  readonly kind: PartKind | undefined
  readonly shelf: Iterable<Part>
}

const SLICE = 100 // rows between two reports of progress
const PRICE = { unit: '1', min: 0, max: 100_000 } as const
const PIECES = { unit: '1', min: 0, max: 100_000, whole: true } as const
const SHAFT_WEIGHT = { unit: 'gr', min: 0, max: 2000 } as const
const CENTS = 100
const keyOf = (kind: string, name: string) => `${kind} ${name.trim().toLowerCase()}`

/** Yields how many rows are done. */
export function* readPartTable(rows: readonly CsvRow[], asked: TableAsked): Generator<number, readonly TableRow[]> {
  const onShelf = new Map([...asked.shelf].map((part) => [keyOf(part.kind, part.name), part]))
  const lines = new Map<string, number>()
  const read: TableRow[] = []
  for (const [i, row] of rows.entries()) {
    if (i % SLICE === 0) yield i
    read.push(oneRow(row, asked, onShelf, lines))
  }
  return read
}

function oneRow(
  { line, cells }: CsvRow,
  { columns, kind: usual }: TableAsked,
  onShelf: ReadonlyMap<string, Part>,
  lines: Map<string, number>,
): TableRow {
  const told = new Map<string, { text: string; unit: EntryUnit | undefined }>()
  columns.forEach(({ target, unit }, i) => {
    const text = (cells[i] ?? '').trim().replace(/^'(?=[=+\-@])/, '')
    if (target !== undefined && text !== '' && !told.has(target)) told.set(target, { text, unit })
  })
  const name = told.get('name')?.text ?? ''
  const stop = (...problems: [RowProblem, ...RowProblem[]]): TableRow => ({ kind: 'problems', line, name, problems })
  const said = told.get('kind')?.text
  const kind = said === undefined ? usual : PART_KINDS.find((each) => sameWord(each, said))
  if (kind === undefined) return stop({ code: 'kind', text: said ?? '' })

  const problems: RowProblem[] = []
  const entries: Record<string, PartEntries[string]> = {}
  for (const field of PART_FIELDS[kind]) {
    const cell = told.get(field.field)
    const entry = cell === undefined ? { value: usualOf(field) } : entryOf(field, cell.text, cell.unit)
    if ('problem' in entry) problems.push(entry.problem)
    else entries[field.field] = entry.value
  }
  const number = (column: 'price' | 'pieces', limits: typeof PRICE | typeof PIECES): number => {
    const text = told.get(column)?.text
    if (text === undefined) return 0
    const entry = parseQuantity(text.replaceAll(/[$€£]/g, ''), limits)
    if (entry.kind === 'number') return entry.value
    problems.push({ code: column, text, problem: entry.problem })
    return 0
  }
  const cents = Math.round(number('price', PRICE) * CENTS)
  const pieces = number('pieces', PIECES)
  const [first, ...others] = problems
  if (first !== undefined) return stop(first, ...others)

  const checked = checkPart(kind, name, entries)
  if (checked.kind === 'problems') {
    const [one, ...more] = checked.problems
    return stop({ code: 'part', problem: one }, ...more.map((problem): RowProblem => ({ code: 'part', problem })))
  }
  const part: Part = { ...checked.part, priceCents: cents }
  const weight = kind === 'shaft' ? told.get('weightGr') : undefined
  const weighed = weight === undefined ? undefined : parseQuantity(weight.text, SHAFT_WEIGHT, weight.unit ?? 'gr')
  const off = weighed?.kind === 'number' ? shaftWeightProblem(part, weighed.value) : undefined
  if (off !== undefined) return stop({ code: 'part', problem: off })
  const key = keyOf(kind, name)
  const before = lines.get(key)
  if (before !== undefined) return stop({ code: 'twice', line: before })
  lines.set(key, line)
  const shelved = onShelf.get(key)
  if (shelved !== undefined) return isSame(shelved, part) ? { kind: 'there', line, name } : stop({ code: 'differs' })
  const lot = pieces > 0 ? { code: told.get('lot')?.text ?? '', pieces } : undefined
  return { kind: 'new', line, part, lot }
}

const usualOf = (field: PartField) => ('usual' in field ? field.usual : undefined)
const sameWord = (a: string, b: string) => a === b.toLowerCase().replaceAll(/[\s_-]+/g, a.includes('-') ? '-' : ' ')

const YES = ['yes', 'y', 'true', '1', 'x']
const NO = ['no', 'n', 'false', '0']

function entryOf(
  field: PartField,
  text: string,
  unit: EntryUnit | undefined,
): { readonly value: PartEntries[string] } | { readonly problem: RowProblem } {
  if (field.shape === 'choice' || field.shape === 'yes or no') {
    const options = field.shape === 'choice' ? field.options : ['yes', 'no']
    const word = text.toLowerCase()
    if (field.shape === 'yes or no' && (YES.includes(word) || NO.includes(word))) return { value: YES.includes(word) }
    const option = options.find((each) => each.toLowerCase() === word)
    return option === undefined ? { problem: { code: 'no-choice', field, text, options } } : { value: option }
  }
  const asked = field.shape === 'count' ? ({ ...field, unit: '1', whole: true } as const) : field
  const entry = parseQuantity(text, asked, unit ?? asked.unit)
  return entry.kind === 'number'
    ? { value: entry.value }
    : { problem: { code: 'entry', field, text, problem: entry.problem } }
}

/** The figures and the price; what it may be replaced by and whether it is made are the shelf's own. */
const isSame = (a: Part, b: Part) =>
  canonical({ ...a, alternates: [], discontinued: false }) === canonical({ ...b, alternates: [], discontinued: false })

/** Cells of a part for a table, in the columns' own units; a field that the kind does not have is empty. */
export function cellOf(part: Part, entries: PartEntries, target: string): string | number | null {
  if (target === 'kind') return part.kind
  if (target === 'name') return part.name
  if (target === 'price') return part.priceCents / CENTS
  const field = fieldOf(part.kind, target)
  const value = field === undefined ? undefined : entries[target]
  if (value === undefined) return null
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : value
}
