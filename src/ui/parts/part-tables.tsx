/** Parts as a table: out to a file, and in from one by way of its columns, a preview, and one command. */
import { useState } from 'react'
import { csvRow } from '../../domain/records/csv'
import type { CsvRow } from '../../domain/records/read-csv'
import { readCsv } from '../../domain/records/read-csv'
import { entriesFromPart } from '../../domain/stock/part-fields'
import { cellOf } from '../../domain/stock/read-part-table'
import { ALL_FIELDS, guessColumn } from '../../domain/stock/table-columns'
import type { ColumnUse } from '../../domain/stock/table-columns'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { download } from '../shop/download'
import { openQuoteWords, columnWord } from '../words/part-table-words'
import { writtenUnit } from '../words/unit-words'
import { ImportTable } from './import-table'
import look from './parts.module.css'

export interface Table {
  readonly file: string
  readonly headings: readonly string[]
  readonly rows: readonly CsvRow[]
  readonly columns: readonly ColumnUse[]
}

const COLUMNS = ['kind', 'name', 'price', ...ALL_FIELDS.keys()]

/** The heading of a column of ours, with the unit its numbers are in: it is read back by the same words. */
function headingOf(target: string): string {
  const field = ALL_FIELDS.get(target)
  const unit = field?.shape === 'number' && field.unit !== '1' ? ` (${writtenUnit(field.unit)})` : ''
  return columnWord(target) + unit
}

const LARGEST = 20_000_000 // bytes, some hundred thousand rows

export default function PartTables({ onClose }: { onClose: () => void }) {
  const shelf = useApp((s) => s.shelf)
  const now = useApp((s) => s.now)
  const [table, setTable] = useState<Table>()
  const [problem, setProblem] = useState('')

  async function open(file: File) {
    setProblem('')
    if (file.size > LARGEST) return setProblem('The file is larger than 20 MB. Split it; nothing was read.')
    const read = readCsv(await file.text())
    if (read.kind === 'open quote') return setProblem(openQuoteWords(read.line))
    const [head, ...rows] = read.rows
    if (head === undefined || rows.length === 0) {
      return setProblem('The file has no rows under a line of headings. Nothing was read.')
    }
    const columns = head.cells.map((heading) => guessColumn(heading, columnWord))
    return setTable({ file: file.name, headings: head.cells, rows, columns })
  }
  function out() {
    const rows = [...shelf.parts.values()].map(({ body }) => {
      const entries = entriesFromPart(body)
      return csvRow(COLUMNS.map((target) => cellOf(body, entries, target)))
    })
    const text = [csvRow(COLUMNS.map(headingOf)), ...rows].join('')
    download(new Blob([text], { type: 'text/csv' }), `grainwright-parts-${now().slice(0, 10)}.csv`)
  }

  if (table !== undefined) return <ImportTable table={table} onTable={setTable} onClose={onClose} />
  return (
    <Dialog title="Parts as a table" onClose={onClose}>
      <p>A table comes in by its columns: you see what each is taken for, and every line, before anything is added.</p>
      <p className={look.actions}>
        <label className={look.file}>
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/csv"
            onChange={(event) => {
              const file = event.target.files?.[0]
              if (file !== undefined) void open(file)
              event.target.value = ''
            }}
          />
          <span>Choose a file to bring in</span>
        </label>
        <Button onClick={out}>Save all parts as a table</Button>
      </p>
      {problem === '' ? null : (
        <Notice level="stop">
          <Label>{problem}</Label>
        </Notice>
      )}
    </Dialog>
  )
}
