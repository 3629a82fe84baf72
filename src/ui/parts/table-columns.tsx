/** Each column of a table, what it is taken for, and the unit of its numbers. */
import { entryDimension } from '../../domain/entry/convert-entry'
import type { EntryUnit } from '../../domain/entry/unit-names'
import { ALL_FIELDS, OWN_COLUMNS, columnUse } from '../../domain/stock/table-columns'
import type { ColumnUse } from '../../domain/stock/table-columns'
import { Label } from '../figures/label'
import { columnWord, unitAssumedWords } from '../words/part-table-words'
import { writtenUnit } from '../words/unit-words'
import type { Table } from './part-tables'
import look from './parts.module.css'

const TARGETS = [...OWN_COLUMNS, ...ALL_FIELDS.keys()]
const UNITS: readonly EntryUnit[] = ['gr', 'g', 'in', 'mm', 'cm', 'thou', 'gr/in', 'g/m', 'lbf', 'h', 'min', '°C', '°F']

interface TableColumnsProps {
  table: Table
  onTable: (table: Table) => void
}

export function TableColumns({ table, onTable }: TableColumnsProps) {
  const put = (at: number, use: ColumnUse) =>
    onTable({ ...table, columns: table.columns.map((each, i) => (i === at ? use : each)) })
  return (
    <ul className={look.columns}>
      {table.headings.map((heading, i) => (
        <Column
          // Columns never move, so their place is their key.
          key={i}
          heading={heading}
          sample={table.rows.find(({ cells }) => (cells[i] ?? '').trim() !== '')?.cells[i] ?? ''}
          use={table.columns[i]!}
          onUse={(use) => put(i, use)}
        />
      ))}
    </ul>
  )
}

interface ColumnProps {
  heading: string
  sample: string
  use: ColumnUse
  onUse: (use: ColumnUse) => void
}

function Column({ heading, sample, use, onUse }: ColumnProps) {
  const field = use.target === undefined ? undefined : ALL_FIELDS.get(use.target)
  const units =
    field?.shape === 'number' ? UNITS.filter((each) => entryDimension(each) === entryDimension(field.unit)) : []
  return (
    <li className={look.column}>
      <span data-label="">
        <b>{heading === '' ? 'no heading' : heading}</b> <span className={look.more}>{sample.slice(0, 40)}</span>
      </span>
      <span className={look.actions}>
        <label>
          <span className="unseen" data-label="">
            {heading} is
          </span>
          <select
            value={use.target ?? ''}
            onChange={(event) =>
              onUse(
                event.target.value === '' ? { target: undefined, isUnitAssumed: false } : columnUse(event.target.value),
              )
            }
          >
            <option value="">left out</option>
            {TARGETS.map((target) => (
              <option key={target} value={target}>
                {columnWord(target)}
              </option>
            ))}
          </select>
        </label>
        {units.length < 2 ? null : (
          <label>
            <span className="unseen" data-label="">
              Unit of {heading}
            </span>
            <select
              value={use.unit}
              onChange={(event) => onUse({ ...use, unit: event.target.value as EntryUnit, isUnitAssumed: false })}
            >
              {units.map((unit) => (
                <option key={unit} value={unit}>
                  {writtenUnit(unit)}
                </option>
              ))}
            </select>
          </label>
        )}
      </span>
      {use.isUnitAssumed && units.length > 1 ? (
        <span className={look.more}>
          <Label>{unitAssumedWords(heading)}</Label>
        </span>
      ) : null}
    </li>
  )
}
