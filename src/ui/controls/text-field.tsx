/** A field for words: kept as they are, never read as markup or a formula. Committed on leaving, or on Enter in one line. */
import type { HTMLInputAutoCompleteAttribute, ReactNode } from 'react'
import { useId, useState } from 'react'
import type { Unknown } from './field-row'
import { describedBy, FieldRow } from './field-row'
import look from './input.module.css'

interface TextFieldProps {
  label: string
  value: string
  name?: string
  hint?: ReactNode
  error?: string
  unknown?: Unknown
  /** Several lines. */
  long?: boolean
  /** One line with room for a sentence. */
  wide?: boolean
  /** Longest text the record keeps. */
  most?: number
  inputMode?: 'text' | 'tel' | 'email' | 'search'
  autoComplete?: HTMLInputAutoCompleteAttribute
  onText?: (text: string) => void
  onCommit: (text: string) => void
}

export function TextField({
  label,
  value,
  name,
  hint,
  error,
  unknown,
  long = false,
  wide = long,
  ...rest
}: TextFieldProps) {
  const id = useId()
  const [draft, setDraft] = useState<{ text: string; over: string; given?: boolean }>()
  // What was not given yet always stands; what was given, until what is kept has changed under it.
  const isOver = draft?.given === true && draft.over !== value
  if (isOver) setDraft(undefined)
  const text = draft === undefined || isOver ? value : draft.text

  function leave() {
    if (draft === undefined || draft.given) return
    if (text === value) return setDraft(undefined)
    setDraft({ ...draft, given: true })
    rest.onCommit(text.trim())
  }
  const shared = {
    id,
    name,
    value: text,
    maxLength: rest.most ?? (long ? 20_000 : 200),
    autoComplete: rest.autoComplete ?? 'off',
    placeholder: unknown?.said ? 'don’t know yet' : undefined,
    'aria-invalid': error !== undefined,
    'aria-describedby': describedBy(id, error),
    onBlur: leave,
  }
  const change = (typed: string) => {
    setDraft({ text: typed, over: value })
    rest.onText?.(typed)
  }

  return (
    <FieldRow label={label} id={id} wide={wide} hint={hint} error={error} unknown={text === '' ? unknown : undefined}>
      <span className={look.box}>
        {long ? (
          <textarea
            {...shared}
            className={`${look.input} ${look.lines}`}
            onChange={(event) => change(event.target.value)}
          />
        ) : (
          <input
            {...shared}
            className={look.input}
            type="text"
            inputMode={rest.inputMode}
            onChange={(event) => change(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') leave()
            }}
          />
        )}
      </span>
    </FieldRow>
  )
}
