/** The numbers of a chart as a table, folded away beneath it. */
import type { ReactNode } from 'react'
import type { Column, TableRow } from '../../controls/data-table'
import { DataTable } from '../../controls/data-table'
import look from './table-twin.module.css'

interface TableTwinProps {
  caption: ReactNode
  columns: readonly Column[]
  rows: readonly TableRow[]
}

export const TableTwin = (table: TableTwinProps) => (
  <details className={look.twin}>
    <summary>As a table</summary>
    <DataTable {...table} />
  </details>
)
