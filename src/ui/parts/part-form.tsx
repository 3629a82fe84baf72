/** One part typed in, kind by kind: every field its record asks for, checked before it is kept. */
import { useEffect, useRef, useState } from 'react'
import type { Part, PartKind } from '../../domain/stock/part'
import { PART_FIELDS, entriesFromPart } from '../../domain/stock/part-fields'
import type { PartEntries, PartField } from '../../domain/stock/part-fields'
import type { CheckedPart } from '../../domain/stock/check-part'
import { checkPart } from '../../domain/stock/check-part'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { Notice } from '../controls/notice'
import { QuantityField } from '../controls/quantity-field'
import { TextField } from '../controls/text-field'
import { partFieldHint, partFieldWord, PRICE_LABEL } from '../words/part-field-words'
import { partProblemWords } from '../words/part-problem-words'

interface PartFormProps {
  kind: PartKind
  before?: Part
  /** *Keep this part*; absent where the button stands elsewhere and names this form by its id. */
  action?: string
  id?: string
  onKeep: (part: Part) => void
}

const PRICE = { unit: '1', min: 0, max: 100_000, decimals: 2 } as const
const CENTS = 100

const usualOf = (field: PartField) => ('usual' in field ? field.usual : undefined)

const startOf = (kind: PartKind, before: Part | undefined): PartEntries =>
  before === undefined
    ? Object.fromEntries(PART_FIELDS[kind].map((field) => [field.field, usualOf(field)]))
    : entriesFromPart(before)

export function PartForm({ kind, before, action, id, onKeep }: PartFormProps) {
  const [name, setName] = useState(before?.name ?? '')
  const [entries, setEntries] = useState<PartEntries>(() => startOf(kind, before))
  const [priceCents, setPriceCents] = useState(before?.priceCents ?? 0)
  const [checked, setChecked] = useState<CheckedPart>()
  const problems = useRef<HTMLDivElement>(null)
  useEffect(() => {
    // The button may stand where the list below does not show.
    if (checked?.kind === 'problems') problems.current?.scrollIntoView({ block: 'nearest' })
  }, [checked])
  const set = (field: string, value: PartEntries[string]) => setEntries((all) => ({ ...all, [field]: value }))

  return (
    <form
      id={id}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        const answer = checkPart(kind, name, entries, before)
        setChecked(answer)
        if (answer.kind === 'ok') onKeep({ ...answer.part, priceCents })
      }}
    >
      <TextField label="Name" name="name" value={name} onText={setName} onCommit={setName} />
      {PART_FIELDS[kind].map((field) => (
        <FieldOf
          key={field.field}
          field={field}
          value={entries[field.field]}
          onSet={(value) => set(field.field, value)}
        />
      ))}
      <QuantityField
        label={PRICE_LABEL}
        name="price"
        asked={PRICE}
        value={priceCents / CENTS}
        onText={(entry) => {
          if (entry.kind === 'number') setPriceCents(Math.round(entry.value * CENTS))
        }}
        onCommit={({ value }) => setPriceCents(Math.round(value * CENTS))}
        onClear={() => setPriceCents(0)}
      />
      <div ref={problems}>
        {checked?.kind === 'problems'
          ? checked.problems.map((problem) => (
              <Notice key={`${problem.code}.${problem.field}`} level="stop">
                {partProblemWords(problem)}
              </Notice>
            ))
          : null}
      </div>
      {action === undefined ? null : (
        <Button kind="primary" type="submit">
          {action}
        </Button>
      )}
    </form>
  )
}

interface FieldOfProps {
  field: PartField
  value: PartEntries[string]
  onSet: (value: PartEntries[string]) => void
}

function FieldOf({ field, value, onSet }: FieldOfProps) {
  const label = partFieldWord(field.field)
  switch (field.shape) {
    case 'choice':
      return (
        <ChoiceField
          label={label}
          name={field.field}
          choices={field.options.map((option) => ({ value: option, label: option }))}
          value={value as string}
          onChoose={onSet}
        />
      )
    case 'yes or no':
      return (
        <ChoiceField
          label={label}
          name={field.field}
          choices={[
            { value: 'yes', label: 'yes' },
            { value: 'no', label: 'no' },
          ]}
          value={value === true ? 'yes' : 'no'}
          onChoose={(chosen) => onSet(chosen === 'yes')}
        />
      )
    case 'count':
    case 'number': {
      const asked =
        field.shape === 'count'
          ? { unit: '1' as const, min: field.min, max: field.max, decimals: 0, whole: true }
          : field
      return (
        <QuantityField
          label={label}
          name={field.field}
          hint={partFieldHint(field.field)}
          asked={asked}
          value={value as number | undefined}
          onText={(entry) => {
            if (entry.kind === 'number') onSet(entry.value)
          }}
          onCommit={(entry) => onSet(entry.value)}
          onClear={() => onSet(undefined)}
        />
      )
    }
  }
}
