/** A table with its caption, ruled by hairlines; it scrolls by itself where it is wider than the page. */
import type { ReactNode } from 'react'
import { useEffect, useId, useRef, useState } from 'react'
import look from './data-table.module.css'

export interface Column {
  readonly head: ReactNode
  /** Figures stand at the right, under one another. */
  readonly figures?: boolean
}
export interface TableRow {
  readonly key: string
  /** The first cell heads its row. */
  readonly cells: readonly ReactNode[]
}

interface DataTableProps {
  caption: ReactNode
  /** The caption is read aloud and not shown where a heading already says it. */
  captionUnseen?: boolean
  columns: readonly Column[]
  rows: readonly TableRow[]
  /** On a phone each row stands as a block with its headings beside the cells, rather than scrolling sideways. */
  blocks?: boolean
}

/** Whether what stands in a box is wider than the box: then it must be reached, and scrolled, by keyboard. */
function useScrolls() {
  const box = useRef<HTMLDivElement>(null)
  const [scrolls, setScrolls] = useState(false)
  useEffect(() => {
    const seen = box.current
    if (seen === null || typeof ResizeObserver === 'undefined') return undefined // a page without layout
    const watch = new ResizeObserver(() => setScrolls(seen.scrollWidth > seen.clientWidth))
    watch.observe(seen)
    watch.observe(seen.firstElementChild!)
    return () => watch.disconnect()
  }, [])
  return { box, scrolls }
}

export function DataTable({ caption, captionUnseen = false, columns, rows, blocks = false }: DataTableProps) {
  const { box, scrolls } = useScrolls()
  const id = useId()
  const reached = scrolls ? ({ tabIndex: 0, role: 'group', 'aria-labelledby': id } as const) : {}
  return (
    <div className={look.scroll} ref={box} {...reached}>
      <table className={blocks ? `${look.table} ${look.blocks}` : look.table}>
        <caption id={id} className={captionUnseen ? 'unseen' : look.caption} data-label="">
          {caption}
        </caption>
        <thead>
          <tr>
            {/* Columns never move, so their place is their key; a column of buttons has a head to be heard. */}
            {columns.map((column, at) => (
              <th key={at} scope="col" className={column.figures ? look.figures : undefined} data-label="">
                {column.head === '' ? <span className="unseen">More</span> : column.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              {row.cells.map((cell, at) =>
                at === 0 ? (
                  <th key={at} scope="row" className={columns[at]?.figures ? look.figures : undefined}>
                    {cell}
                  </th>
                ) : (
                  <td key={at} className={columns[at]?.figures ? look.figures : undefined}>
                    {blocks ? (
                      // The column's own heading says it to a reader of the table.
                      <span className={look.named} aria-hidden="true" data-label="">
                        {columns[at]?.head}
                      </span>
                    ) : null}
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
