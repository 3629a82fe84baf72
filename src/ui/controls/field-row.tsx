/** What every field shares: label, control, hint, the way out of not knowing, and the sentence when an entry fails. */
import type { ReactNode } from 'react'
import { Button } from './button'
import look from './field-row.module.css'

/** One tap says *don't know yet*; then the field says who owes the answer. */
export interface Unknown {
  readonly said: boolean
  /** Who owes it and until when; shown once it is said. */
  readonly owed?: ReactNode
  readonly onSay: () => void
}

interface FieldRowProps {
  label: ReactNode
  /** The id of the control; `${id}-hint` and `${id}-error` describe it. */
  id: string
  /** For a group of controls the label names the group instead. */
  group?: boolean
  /** Takes the room of the hint as well; the hint goes beneath. */
  wide?: boolean
  hint?: ReactNode
  error?: string | undefined
  unknown?: Unknown | undefined
  children: ReactNode
}

/** The ids that describe a control, for its `aria-describedby`. */
export const describedBy = (id: string, error: string | undefined) =>
  error === undefined ? `${id}-hint` : `${id}-error ${id}-hint`

export function FieldRow({ label, id, group = false, wide = false, hint, error, unknown, children }: FieldRowProps) {
  const row = (
    <div className={wide ? look.wideRow : look.row}>
      {group ? (
        <span id={`${id}-label`} className={look.label} data-label="">
          {label}
        </span>
      ) : (
        <label className={look.label} htmlFor={id} data-label="">
          {label}
        </label>
      )}
      <div className={look.control}>{children}</div>
      <div className={look.beside}>
        <p id={`${id}-hint`} data-label="">
          {unknown?.said ? (unknown.owed ?? hint) : hint}
        </p>
        {unknown === undefined || unknown.said ? null : (
          <Button kind="text" onClick={unknown.onSay}>
            Don’t know yet
          </Button>
        )}
      </div>
      <p id={`${id}-error`} className={look.error} aria-live="polite" data-label="">
        {error}
      </p>
    </div>
  )
  // A legend would have to stand outside the row, so the group takes its name from the label in it.
  return group ? (
    <fieldset className={look.field} aria-labelledby={`${id}-label`} aria-describedby={describedBy(id, error)}>
      {row}
    </fieldset>
  ) : (
    <div className={look.field}>{row}</div>
  )
}
