/** What is said of a table of parts: its columns, its rows, and what is wrong with each. */
import type { RowProblem, TableRow } from '../../domain/stock/read-part-table'
import { PART_KINDS } from '../../domain/stock/part'
import type { ColumnTarget } from '../../domain/stock/table-columns'
import { entryWords } from './entry-words'
import { counted } from './format'
import { partFieldWord, PRICE_LABEL } from './part-field-words'
import { partProblemWords } from './part-problem-words'

const OWN: Readonly<Record<string, string>> = {
  kind: 'Kind',
  name: 'Name',
  price: PRICE_LABEL,
  lot: 'Lot code',
  pieces: 'Pieces received',
}
export const columnWord = (target: ColumnTarget): string => OWN[target] ?? partFieldWord(target)

const NUMBER = { unit: '1', min: 0, max: 100_000 } as const

export function rowProblemWords(problem: RowProblem): string {
  switch (problem.code) {
    case 'entry': {
      const { field, text } = problem
      const asked = field.shape === 'number' ? field : ({ ...NUMBER, ...field, unit: '1', whole: true } as const)
      return entryWords(partFieldWord(field.field), problem.problem, text, asked)
    }
    case 'no-choice':
      return `${partFieldWord(problem.field.field)}: “${problem.text}” is none of ${problem.options.join(', ')}.`
    case 'kind':
      return problem.text === ''
        ? 'Kind: not said. Add a column for it, or choose one kind for the whole table.'
        : `Kind: “${problem.text}” is none of ${PART_KINDS.join(', ')}.`
    case 'price':
    case 'pieces':
      return entryWords(OWN[problem.code]!, problem.problem, problem.text, NUMBER)
    case 'part':
      return partProblemWords(problem.problem)
    case 'twice':
      return `The same kind and name stand on line ${problem.line}. One of them has to go or be named apart.`
    case 'differs':
      return 'It is on the shelf with other figures. Change it on its own page, with the reason.'
  }
}

export interface Tallied {
  readonly fresh: number
  readonly there: number
  readonly wrong: number
}
export const tallied = (rows: readonly TableRow[]): Tallied => ({
  fresh: rows.filter(({ kind }) => kind === 'new').length,
  there: rows.filter(({ kind }) => kind === 'there').length,
  wrong: rows.filter(({ kind }) => kind === 'problems').length,
})

export const talliedWords = ({ fresh, there, wrong }: Tallied): string =>
  [
    `${counted(fresh, 'part')} to add`,
    ...(there === 0 ? [] : [`${there} already on the shelf, with the same figures`]),
    wrong === 0 ? 'no line with a problem' : `${counted(wrong, 'line')} with a problem`,
  ].join('; ') + '.'

export const openQuoteWords = (line: number): string =>
  `The quotation mark on line ${line} is never closed, so the rest of the file cannot be told apart. Nothing was read.`

export const unitAssumedWords = (heading: string): string =>
  `“${heading}” names no unit. Say which its numbers are in; a cell that names its own is read by that.`

/** How far a table is on its way to the shelf. */
export interface Progress {
  readonly step: 'read' | 'make ready' | 'write'
  readonly rows: number
}
export function progressWords({ step, rows }: Progress, total: number): string {
  switch (step) {
    case 'read':
      return `Reading line ${rows} of ${total}`
    case 'make ready':
      return `Making part ${rows} of ${total} ready`
    case 'write':
      return `Writing: part ${rows} of ${total}. None stands on the shelf before all do.`
  }
}

export const NOT_ADDED =
  'The parts are not on the shelf: the book did not take them, all or none. See the notice at the top of the page.'
