/** One of a few, as broad buttons; underneath a radio group, so that arrows, Tab and a screen reader find what they expect. */
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import type { Unknown } from './field-row'
import { FieldRow } from './field-row'
import look from './choice-field.module.css'

export interface Choice<V extends string> {
  readonly value: V
  readonly label: ReactNode
}

interface ChoiceFieldProps<V extends string> {
  label: string
  choices: readonly Choice<V>[]
  /** Nothing is preselected: undefined until it was chosen. */
  value: V | undefined
  name?: string
  hint?: ReactNode
  unknown?: Unknown
  error?: string
  onChoose: (value: V) => void
}

export function ChoiceField<V extends string>({ label, choices, value, name, ...rest }: ChoiceFieldProps<V>) {
  const id = useId()
  const { hint, error, onChoose } = rest
  const unknown = value === undefined ? rest.unknown : undefined
  // What was chosen shows at once, until what is kept has changed under it; whether it is kept, the save state says.
  const [given, setGiven] = useState<{ value: V; over: V | undefined }>()
  if (given !== undefined && given.over !== value) setGiven(undefined)
  const shown = given !== undefined && given.over === value ? given.value : value
  const choose = (chosen: V) => {
    setGiven({ value: chosen, over: value })
    onChoose(chosen)
  }
  return (
    <FieldRow label={label} id={id} group wide hint={hint} error={error} unknown={unknown}>
      <div className={look.choices}>
        {choices.map((choice) => (
          <label key={choice.value} className={look.choice} data-label="">
            <input
              type="radio"
              className={look.radio}
              name={name ?? id}
              value={choice.value}
              checked={choice.value === shown}
              onChange={() => choose(choice.value)}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
    </FieldRow>
  )
}
