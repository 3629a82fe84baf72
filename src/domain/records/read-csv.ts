/**
 * Tables as spreadsheets write them [RFC4180], and as they often are: split by comma, semicolon or tab, lines ended either
 * way, a byte order mark in front. A quote that is never closed is said with the line it began on.
 */
export interface CsvRow {
  /** The line of the file it begins on, from 1. */
  readonly line: number
  readonly cells: readonly string[]
}
export type CsvRead =
  | { readonly kind: 'rows'; readonly rows: readonly CsvRow[]; readonly separator: Separator }
  | { readonly kind: 'open quote'; readonly line: number }

const SEPARATORS = [',', ';', '\t'] as const
export type Separator = (typeof SEPARATORS)[number]

/** Rows whose cells are all empty are left out. */
export function readCsv(text: string): CsvRead {
  const body = text.replace(/^\uFEFF/, '')
  const separator = separatorOf(body)
  const rows: CsvRow[] = []
  let cells: string[] = []
  let [cell, line, rowLine, at] = ['', 1, 1, 0]
  const endRow = () => {
    cells.push(cell)
    if (cells.some((each) => each.trim() !== '')) rows.push({ line: rowLine, cells })
    cells = []
    cell = ''
  }
  while (at < body.length) {
    const character = body[at]!
    if (character === '"' && cell.trim() === '') {
      const quoted = quotedFrom(body, at)
      if (quoted === undefined) return { kind: 'open quote', line }
      cell = quoted.text
      line += quoted.lines
      at = quoted.end
    } else if (character === separator) {
      cells.push(cell)
      cell = ''
      at += 1
    } else if (character === '\n' || character === '\r') {
      endRow()
      at += character === '\r' && body[at + 1] === '\n' ? 2 : 1
      line += 1
      rowLine = line
    } else {
      cell += character
      at += 1
    }
  }
  if (cell !== '' || cells.length > 0) endRow()
  return { kind: 'rows', rows, separator }
}

/** The text between quotes that begin at `from`, its doubled quotes made single, and where it ends. */
function quotedFrom(body: string, from: number) {
  let text = ''
  let at = from + 1
  for (;;) {
    const quote = body.indexOf('"', at)
    if (quote < 0) return undefined
    text += body.slice(at, quote)
    if (body[quote + 1] !== '"') return { text, end: quote + 1, lines: text.split(/\r\n|\r|\n/).length - 1 }
    text += '"'
    at = quote + 2
  }
}

/** The one that splits the first line into the most cells, quotes left aside; a comma when none does. */
function separatorOf(body: string): Separator {
  const first = body.replaceAll(/"(?:[^"]|"")*"/g, '').split(/[\r\n]/, 1)[0]!
  const count = (separator: string) => first.split(separator).length
  return SEPARATORS.toSorted((a, b) => count(b) - count(a))[0]!
}
