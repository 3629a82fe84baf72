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
  /** On each keystroke: the day so far, so that figures can follow; nothing is to be kept yet. */
  onText?: (entry: DayEntry) => void
  onCommit: (day: string) => void
  onClear?: () => void
}

export function DayField({ label, value, today, name, hint, unknown, onText, onCommit, onClear }: DayFieldProps) {
  const id = useId()
  const kept = value === undefined ? '' : showDayAndYear(value)
  const [draft, setDraft] = useState<{ text: string; over: string; given?: boolean }>()
  const [error, setError] = useState<string>()
  const text = draft === undefined || (draft.given && draft.over !== kept) ? kept : draft.text
  const typed = parseDay(text, today)

  function leave() {
    if (draft === undefined || draft.given) return
    if (text === kept) {
      setError(undefined)
      return setDraft(undefined)
    }
    if (typed.kind === 'day') {
      setError(undefined)
      setDraft({ ...draft, given: true })
      if (typed.day !== value) onCommit(typed.day)
    } else if (typed.problem.code === 'empty' && (value === undefined || onClear !== undefined)) {
      setError(undefined)
      setDraft({ ...draft, given: true })
      if (value !== undefined) onClear?.()
    } else setError(dayWords(label, typed.problem, text))
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
            onText?.(entry)
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
