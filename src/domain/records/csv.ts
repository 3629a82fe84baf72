/**
 * Tables for a spreadsheet [RFC4180]: quoted where needed, lines ended by CR LF. A text that a spreadsheet would take for a
 * formula gets an apostrophe in front; numbers stay numbers.
 */
export type Cell = string | number | null

const FORMULA = /^[=+\-@\t\r]/

function cell(value: Cell): string {
  if (value === null) return ''
  if (typeof value === 'number') return String(value)
  const safe = FORMULA.test(value) ? `'${value}` : value
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** One row of a table, with its line end. */
export const csvRow = (cells: readonly Cell[]): string => `${cells.map(cell).join(',')}\r\n`
