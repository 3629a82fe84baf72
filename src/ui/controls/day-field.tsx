/** A field for a calendar day, typed as people write it and read back in full, so that a slip is seen at once. */
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import type { DayEntry } from '../../domain/entry/parse-day'
import { parseDay } from '../../domain/entry/parse-day'
import { showDayAndYear, showLongDay } from '../words/dates'
import { dayWords } from '../words/entry-words'
import type { Unknown } from './field-row'
import { describedBy, FieldRow } from './field-row'
import look from './input.module.css'

interface DayFieldProps {
  label: string
  /** ISO day. */
  value: string | undefined
  /** ISO day; a day typed without its year is the next one from here. */
  today: string
  name?: string
  hint?: ReactNode
  unknown?: Unknown
  /** What was refused here before and is still to be put right: it stands in the field again, with why. */
  refused?: string
  onRefused?: (text: string | undefined) => void
  /** On each keystroke: the day so far, so that figures can follow; nothing is to be kept yet. */
  onText?: (entry: DayEntry) => void
  onCommit: (day: string) => void
  onClear?: () => void
}

interface Draft {
  readonly text: string
  readonly over: string
  readonly given?: boolean
}

export function DayField({ label, value, today, name, hint, unknown, refused, ...on }: DayFieldProps) {
  const id = useId()
  const kept = value === undefined ? '' : showDayAndYear(value)
  const [draft, setDraft] = useState<Draft | undefined>(
    refused === undefined ? undefined : { text: refused, over: kept },
  )
  const [error, setError] = useState(() => (refused === undefined ? undefined : complaint(refused)))
  const text = draft === undefined || (draft.given && draft.over !== kept) ? kept : draft.text
  const typed = parseDay(text, today)

  function complaint(said: string): string | undefined {
    const entry = parseDay(said, today)
    return entry.kind === 'day' ? undefined : dayWords(label, entry.problem, said)
  }
  function leave() {
    if (draft === undefined || draft.given) return
    if (text === kept) {
      setError(undefined)
      on.onRefused?.(undefined)
      return setDraft(undefined)
    }
    if (typed.kind === 'day') {
      setError(undefined)
      setDraft({ ...draft, given: true })
      if (typed.day !== value) on.onCommit(typed.day)
    } else if (typed.problem.code === 'empty' && (value === undefined || on.onClear !== undefined)) {
      setError(undefined)
      setDraft({ ...draft, given: true })
      if (value !== undefined) on.onClear?.()
    } else {
      setError(dayWords(label, typed.problem, text))
      on.onRefused?.(text)
    }
  }

  return (
    <FieldRow
      label={label}
      id={id}
      hint={typed.kind === 'day' ? showLongDay(typed.day) : (hint ?? 'such as 14 Jan')}
      error={error}
      unknown={text === '' ? unknown : undefined}
    >
      <span className={look.box}>
        <input
          id={id}
          className={look.input}
          name={name}
          type="text"
          autoComplete="off"
          value={text}
          placeholder={unknown?.said ? 'don’t know yet' : undefined}
          aria-invalid={error !== undefined}
          aria-describedby={describedBy(id, error)}
          onChange={(event) => {
            setDraft({ text: event.target.value, over: kept })
            const entry = parseDay(event.target.value, today)
            if (entry.kind === 'day') setError(undefined)
            on.onText?.(entry)
          }}
          onBlur={leave}
          onKeyDown={(event) => {
            if (event.key === 'Enter') leave()
          }}
        />
      </span>
    </FieldRow>
  )
}
