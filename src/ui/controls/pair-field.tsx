/** Readings that come in pairs (arrow weight and speed, draw and force): a row each, with an empty row always ready. */
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import type { Asked } from '../../domain/entry/parse-quantity'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import { useUnits } from '../app/units'
import { convertEntry } from '../../domain/entry/convert-entry'
import { entryWords } from '../words/entry-words'
import { showPlain } from '../words/format'
import { inSystem } from '../words/unit-systems'
import { withUnit } from '../words/with-unit'
import type { Unknown } from './field-row'
import { FieldRow } from './field-row'
import inputs from './input.module.css'
import look from './pair-field.module.css'

export interface PairColumn {
  readonly label: string
  readonly asked: Asked & { readonly decimals: number }
}
export type Pair = readonly [number, number]

interface PairFieldProps {
  label: string
  columns: readonly [PairColumn, PairColumn]
  /** In the units asked for. */
  value: readonly Pair[]
  name: string
  hint?: ReactNode
  unknown?: Unknown
  /** The whole list, each time a row is complete or was emptied. */
  onCommit: (pairs: readonly Pair[]) => void
}

type Row = readonly [string, string]
const EMPTY: Row = ['', '']

export function PairField({ label, columns, value, name, hint, unknown, onCommit }: PairFieldProps) {
  const id = useId()
  const system = useUnits()
  const beside = columns.map(({ asked }) => inSystem(asked.unit, asked.decimals, system).unit) as [
    Asked['unit'],
    Asked['unit'],
  ]
  const shown = (n: number, c: 0 | 1) => {
    const { unit, decimals } = columns[c].asked
    return unit === beside[c] ? showPlain(n) : showPlain(convertEntry(n, unit, beside[c]), decimals + 2)
  }
  const shownRow = ([a, b]: Pair): Row => [shown(a, 0), shown(b, 1)]
  const kept: Row[] = value.map(shownRow)
  const keptText = JSON.stringify(kept)
  const [draft, setDraft] = useState<{ rows: readonly Row[]; over: string; given: readonly string[] }>()
  const [error, setError] = useState<string>()
  // What is typed while rows are on their way to be kept stands over the rows before and over each list that was given.
  const isOver = draft?.over === keptText || draft?.given.includes(keptText) === true
  const rows = draft === undefined || (!isOver && error === undefined) ? kept : draft.rows
  const offered = rows.at(-1)?.every((text) => text === '') ? rows : [...rows, EMPTY]

  function change(r: number, c: 0 | 1, text: string) {
    const next = offered.map((row, at): Row => (at === r ? (c === 0 ? [text, row[1]] : [row[0], text]) : row))
    setDraft({ rows: next, over: keptText, given: isOver && draft !== undefined ? draft.given : [] })
  }

  function leave() {
    if (draft === undefined) return
    const pairs: Pair[] = []
    for (const row of rows.filter((each) => each.some((text) => text.trim() !== ''))) {
      const pair: number[] = []
      for (const c of [0, 1] as const) {
        const entry = parseQuantity(row[c], columns[c].asked, beside[c])
        if (entry.kind === 'number') pair.push(entry.value)
        // The other half of a pair is still to come.
        else if (entry.problem.code === 'empty') return setError(undefined)
        else return setError(entryWords(columns[c].label, entry.problem, row[c], columns[c].asked))
      }
      pairs.push([pair[0]!, pair[1]!])
    }
    setError(undefined)
    if (JSON.stringify(pairs) === JSON.stringify(value)) return
    const text = JSON.stringify(pairs.map(shownRow))
    if (draft.given.at(-1) === text) return
    setDraft({ ...draft, given: [...draft.given, text] })
    onCommit(pairs)
  }

  return (
    <FieldRow label={label} id={id} group hint={hint} error={error} unknown={rows.length === 0 ? unknown : undefined}>
      <div className={look.pairs}>
        {columns.map((column, c) => (
          <span key={column.label} id={`${id}-${c}`} className={look.head}>
            {withUnit(column.label, beside[c]!)}
          </span>
        ))}
        {offered.map((row, r) =>
          ([0, 1] as const).map((c) => (
            <span key={`${r}.${c}`} className={inputs.box}>
              <input
                className={inputs.input}
                name={`${name}.${r}.${c}`}
                type="text"
                inputMode="decimal"
                autoComplete="off"
                value={row[c]}
                aria-label={withUnit(`${columns[c].label} ${r + 1}`, beside[c])}
                aria-describedby={`${id}-error`}
                onChange={(event) => change(r, c, event.target.value)}
                onBlur={leave}
                onKeyDown={(event) => {
                  if (event.key === 'Enter') leave()
                }}
              />
            </span>
          )),
        )}
      </div>
    </FieldRow>
  )
}
