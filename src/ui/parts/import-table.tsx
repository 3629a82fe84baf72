/** Bringing a table in: its columns, then its rows as they would be added, then one command. */
import { useEffect, useRef, useState } from 'react'
import type { PartKind } from '../../domain/stock/part'
import { PART_KINDS } from '../../domain/stock/part'
import type { TableRow } from '../../domain/stock/read-part-table'
import { readPartTable } from '../../domain/stock/read-part-table'
import { importParts } from '../../state/part-table-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { partKindWord } from '../words/part-kind-words'
import type { Progress } from '../words/part-table-words'
import { NOT_ADDED, progressWords, tallied } from '../words/part-table-words'
import { ImportPreview } from './import-preview'
import type { Table } from './part-tables'
import { TableColumns } from './table-columns'
import look from './parts.module.css'

const repaint = () => new Promise<void>((go) => setTimeout(go, 0))

interface ImportTableProps {
  table: Table
  onTable: (table: Table) => void
  onClose: () => void
}

export function ImportTable({ table, onTable, onClose }: ImportTableProps) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const [kind, setKind] = useState<PartKind>()
  const [done, setDone] = useState<Progress>()
  const [rows, setRows] = useState<readonly TableRow[]>()
  const [said, setSaid] = useState('')
  const [isAdded, setAdded] = useState(false)
  const run = useRef(0)
  useEffect(
    () => () => {
      run.current += 1 // closed in the middle: nothing is made ready for a write that nobody waits for
    },
    [],
  )
  const needsKind = !table.columns.some(({ target }) => target === 'kind')

  async function preview() {
    if (needsKind && kind === undefined) return setSaid('No column says the kind. Choose which kind these parts are.')
    if (!table.columns.some(({ target }) => target === 'name')) return setSaid('Say which column is the name.')
    setSaid('')
    run.current += 1
    const own = run.current
    const shelved = [...shelf.parts.values()].map(({ body }) => body)
    const work = readPartTable(table.rows, { columns: table.columns, kind, shelf: shelved })
    for (;;) {
      const step = work.next()
      if (step.done === true) {
        setDone(undefined)
        return setRows(step.value)
      }
      setDone({ step: 'read', rows: step.value })
      await repaint()
      if (run.current !== own) return
    }
  }
  async function add() {
    if (rows === undefined) return
    const { fresh } = tallied(rows)
    if (fresh === 0) return setSaid('There is nothing to add.')
    setSaid('')
    run.current += 1
    const own = run.current
    const saved = await importParts(
      store.getState(),
      rows,
      store.getState().newId,
      async (made) => {
        setDone({ step: 'make ready', rows: made })
        await repaint()
        return run.current === own
      },
      (written) => setDone({ step: 'write', rows: written }),
    )
    setDone(undefined)
    if (saved === 'stopped') return setSaid('Stopped. Nothing was added.')
    if (!saved) return setSaid(NOT_ADDED)
    setAdded(true)
    setSaid(`${fresh} parts are on the shelf.`)
  }

  /** What is read or made ready is thrown away; a write under way is all or nothing by itself. */
  function stop() {
    run.current += 1
    if (done?.step === 'read') setDone(undefined)
  }

  const total = rows === undefined ? table.rows.length : tallied(rows).fresh
  return (
    <Dialog
      title={rows === undefined ? 'What the columns are' : 'What would be added'}
      onClose={onClose}
      actions={
        isAdded ? (
          <Button kind="primary" onClick={onClose}>
            Close
          </Button>
        ) : done !== undefined ? (
          done.step === 'write' ? null : (
            <Button onClick={stop}>Stop</Button>
          )
        ) : (
          <>
            {rows === undefined ? (
              <Button kind="primary" onClick={() => void preview()}>
                Read the lines
              </Button>
            ) : (
              <>
                <Button kind="primary" onClick={() => void add()}>
                  <Label>{tallied(rows).wrong === 0 ? `Add ${total}` : `Add ${total}, leave the rest out`}</Label>
                </Button>
                <Button onClick={() => setRows(undefined)}>Back to the columns</Button>
              </>
            )}
            <Button onClick={onClose}>Cancel</Button>
          </>
        )
      }
    >
      <p>
        <Label>
          {table.file}: {table.rows.length} lines under the headings.
        </Label>
      </p>
      {done === undefined ? null : (
        <p className={look.column}>
          <label data-label="">
            {progressWords(done, total)} <progress max={total} value={done.rows} />
          </label>
        </p>
      )}
      {said === '' ? null : (
        <Notice level={isAdded ? 'note' : 'look'} lead={isAdded ? 'Added:' : undefined}>
          <Label>{said}</Label>
        </Notice>
      )}
      {done !== undefined || isAdded ? null : rows === undefined ? (
        <>
          {needsKind ? (
            <p className={look.column}>
              <label>
                Kind of all of them{' '}
                <select value={kind ?? ''} onChange={(event) => setKind((event.target.value || undefined) as PartKind)}>
                  <option value="">choose</option>
                  {PART_KINDS.map((each) => (
                    <option key={each} value={each}>
                      {partKindWord(each)}
                    </option>
                  ))}
                </select>
              </label>
            </p>
          ) : null}
          <TableColumns table={table} onTable={onTable} />
        </>
      ) : (
        <ImportPreview rows={rows} />
      )}
    </Dialog>
  )
}
