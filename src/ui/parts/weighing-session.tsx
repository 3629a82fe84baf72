/** A tray weighed through: one entry each, Enter takes it and the field is free again. Small parts go by the batch. */
import { useId, useRef, useState } from 'react'
import type { Lot } from '../../domain/stock/lot'
import type { LotView } from '../../domain/stock/lot-view'
import type { Part } from '../../domain/stock/part'
import type { Standing } from '../../domain/stock/shelf'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import { takeWeighing } from '../../domain/stock/take-weighing'
import type { WeighingAnswer } from '../../domain/stock/take-weighing'
import { numberPiece, weighLot } from '../../state/lot-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { describedBy, FieldRow } from '../controls/field-row'
import input from '../controls/input.module.css'
import { Notice } from '../controls/notice'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { askedWords, nextNumber, refusedWeighing, takenWords } from '../words/stock-words'
import look from './parts.module.css'
import { isHead } from '../../domain/stock/part-places'

const PIECES = { unit: '1', min: 1, max: 500, whole: true } as const

interface SessionProps {
  part: Part
  lot: Standing<Lot>
  view: LotView | undefined
}

export function WeighingSession({ part, lot, view }: SessionProps) {
  const store = useAppStore()
  const scales = useApp((s) => s.shelf.rules.scales)
  const [scale, setScale] = useState(scales[0]?.name ?? '')
  const [text, setText] = useState('')
  const [pieces, setPieces] = useState('1')
  const [answer, setAnswer] = useState<WeighingAnswer>()
  const [taken, setTaken] = useState({ count: 0, said: '' })
  const turn = useRef<Promise<unknown>>(Promise.resolve())
  const field = useRef<HTMLInputElement>(null)
  const isNumbered = isHead(part.kind)
  const [no, setNo] = useState<string>()
  const nextNo = no ?? nextNumber(lot.body.numbered)

  function take(sure: boolean) {
    const entered = parseQuantity(pieces, PIECES)
    const count = entered.kind === 'number' && !isNumbered ? entered.value : 1
    const capacityGr = scales.find((each) => each.name === scale)?.capacityGr
    const found = takeWeighing(text, count, { part, view, capacityGr }, sure)
    setAnswer(found)
    if (found.kind !== 'taken') return field.current?.focus()
    const { weightGr, raw } = found
    const weighed = { weightGr, raw, pieces: count, scale }
    setText('')
    field.current?.focus()
    const numbered = isNumbered && nextNo !== '' ? nextNo : undefined
    setNo(undefined)
    turn.current = turn.current.then(async () => {
      const now = store.getState().shelf.lots.get(lot.id) ?? lot
      const saved =
        numbered === undefined
          ? await weighLot(store.getState(), lot.id, weighed)
          : await numberPiece(store.getState(), now, numbered, weighed)
      if (saved) setTaken((before) => ({ count: before.count + 1, said: takenWords(weightGr, count, numbered) }))
      else setText((typed) => (typed === '' ? raw : typed))
    })
  }

  const unit = isNumbered ? 'one head' : pieces === '1' ? 'one' : 'the batch'
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        take(false)
      }}
    >
      {scales.length < 2 ? null : (
        <ChoiceField
          label="On the scale"
          name={`scale-${lot.id}`}
          choices={scales.map(({ name }) => ({ value: name, label: name }))}
          value={scale}
          onChoose={setScale}
        />
      )}
      {isNumbered ? (
        <EntryField label="Its number" name="no" value={nextNo} onText={setNo} hint="engraved or written on it" />
      ) : (
        <EntryField
          label="Pieces on the pan"
          name="pieces"
          value={pieces}
          onText={setPieces}
          hint="light parts weigh truer by the batch"
        />
      )}
      <EntryField
        label={`Weight of ${unit}`}
        name="weigh"
        value={text}
        onText={setText}
        suffix="gr"
        box={field}
        error={answer === undefined ? undefined : refusedWeighing(answer, text)}
      />
      {answer?.kind !== 'asked' ? null : (
        <>
          {answer.slips.map((slip) => (
            <Notice key={slip.code} level="look">
              <Label>{askedWords(slip)}</Label>
            </Notice>
          ))}
          <p className={look.actions}>
            <Button onClick={() => take(true)}>Keep it, it is right</Button>
          </p>
        </>
      )}
      <p className={look.actions}>
        <Button type="submit" kind="primary">
          Take
        </Button>
        <Label>
          <Status>{taken.count === 0 ? '' : `${taken.said} ${taken.count} taken in this sitting.`}</Status>
        </Label>
      </p>
    </form>
  )
}

interface EntryFieldProps {
  label: string
  name: string
  value: string
  onText: (text: string) => void
  hint?: string
  suffix?: string
  error?: string | undefined
  box?: React.RefObject<HTMLInputElement | null>
}

/** A field that a session empties again and again; nothing of it is kept before *Take*. */
function EntryField({ label, name, value, onText, hint, suffix, error, box }: EntryFieldProps) {
  const id = useId()
  return (
    <FieldRow label={label} id={id} hint={hint} error={error}>
      <span className={input.box}>
        <input
          ref={box}
          id={id}
          className={input.input}
          name={name}
          type="text"
          inputMode={suffix === undefined ? 'text' : 'decimal'}
          autoComplete="off"
          maxLength={40}
          value={value}
          aria-invalid={error !== undefined}
          aria-describedby={describedBy(id, error)}
          onChange={(event) => onText(event.target.value)}
        />
        {suffix === undefined ? null : (
          <span className={input.unit} data-label="">
            {suffix}
          </span>
        )}
      </span>
    </FieldRow>
  )
}
