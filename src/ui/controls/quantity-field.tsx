/** A field for one number with its unit. Comma or point, a typed unit is understood; a failed entry stays where it is. */
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import { convertEntry } from '../../domain/entry/convert-entry'
import type { Asked, Entry } from '../../domain/entry/parse-quantity'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import { useUnits } from '../app/units'
import { entryWords } from '../words/entry-words'
import { showPlain } from '../words/format'
import { inSystem } from '../words/unit-systems'
import { saidUnit, writtenUnit } from '../words/unit-words'
import type { Unknown } from './field-row'
import { describedBy, FieldRow } from './field-row'
import look from './input.module.css'

export interface QuantityFieldProps {
  label: string
  /** Unit and bounds of what is kept, and the decimals it is usually read to. */
  asked: Asked & { readonly decimals: number }
  /** What is kept, in the asked unit. */
  value: number | undefined
  /** Name of the input in the page; also what a test finds it by. */
  name?: string
  hint?: ReactNode
  unknown?: Unknown
  /** What was refused here before and is still to be put right: it stands in the field again, with why. */
  refused?: string
  onRefused?: (text: string | undefined) => void
  /** On each keystroke, so that figures can follow; nothing is to be kept yet. */
  onText?: (entry: Entry) => void
  /** On Enter or on leaving, once for each entry, and only for a number. */
  onCommit: (entry: Entry & { kind: 'number' }) => void
  /** The field was emptied. Without it an emptied field is an error. */
  onClear?: () => void
}

interface Draft {
  readonly text: string
  readonly over: string
  readonly given?: boolean
}

export function QuantityField({ label, asked, value, name, hint, unknown, refused, ...on }: QuantityFieldProps) {
  const id = useId()
  const beside = inSystem(asked.unit, asked.decimals, useUnits()).unit
  const kept = value === undefined ? '' : showKept(value, asked, beside)
  const [draft, setDraft] = useState<Draft | undefined>(
    refused === undefined ? undefined : { text: refused, over: kept },
  )
  const [error, setError] = useState(() => (refused === undefined ? undefined : complaint(refused)))
  // What was not given yet always stands; what was given, until what is kept has changed under it.
  const text = draft === undefined || (draft.given && draft.over !== kept) ? kept : draft.text

  function complaint(typed: string): string | undefined {
    const entry = parseQuantity(typed, asked, beside)
    return entry.kind === 'number' ? undefined : entryWords(label, entry.problem, typed, asked)
  }
  function change(typed: string) {
    setDraft({ text: typed, over: kept })
    const entry = parseQuantity(typed, asked, beside)
    if (entry.kind === 'number') setError(undefined)
    on.onText?.(entry)
  }
  function leave() {
    if (draft === undefined || draft.given) return
    if (text === kept) {
      setError(undefined)
      on.onRefused?.(undefined)
      return setDraft(undefined)
    }
    const entry = parseQuantity(text, asked, beside)
    if (entry.kind === 'number') {
      setError(undefined)
      setDraft({ ...draft, given: true })
      if (entry.value !== value) on.onCommit(entry)
    } else if (entry.problem.code === 'empty' && (value === undefined || on.onClear !== undefined)) {
      setError(undefined)
      setDraft({ ...draft, given: true })
      if (value !== undefined) on.onClear?.()
    } else {
      setError(entryWords(label, entry.problem, text, asked))
      on.onRefused?.(text)
    }
  }

  return (
    <FieldRow label={label} id={id} hint={hint} error={error} unknown={text === '' ? unknown : undefined}>
      <span className={look.box}>
        <input
          id={id}
          className={look.input}
          name={name}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          placeholder={unknown?.said ? 'don’t know yet' : undefined}
          aria-invalid={error !== undefined}
          aria-describedby={`${id}-unit ${describedBy(id, error)}`}
          onChange={(event) => change(event.target.value)}
          onBlur={leave}
          onKeyDown={(event) => {
            if (event.key === 'Enter') leave()
          }}
        />
        <span className={look.unit} aria-hidden="true" data-label="">
          {writtenUnit(beside)}
        </span>
        <span id={`${id}-unit`} hidden>
          {asked.unit === '1' ? '' : saidUnit(beside)}
        </span>
      </span>
    </FieldRow>
  )
}

/** Rounded two decimals finer than it is read: a weight typed in grams is no easier to read for its thousandths of a grain. */
const showKept = (value: number, asked: QuantityFieldProps['asked'], beside: Asked['unit']) =>
  showPlain(convertEntry(value, asked.unit, beside), asked.decimals + 2)
