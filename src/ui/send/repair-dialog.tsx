/** A repair of one arrow: which part, why, and what it weighs now. It writes a new version of the arrow's record. */
import { useState } from 'react'
import { standing } from '../../domain/bench/bench'
import { takeReading } from '../../domain/bench/take-reading'
import { repairProblems } from '../../domain/send/repair'
import type { RepairAsked } from '../../domain/send/repair'
import { lotsOfPart } from '../../domain/stock/lots-of-part'
import { partsOfKind } from '../../domain/stock/shelf'
import { repairArrow } from '../../state/afterwards-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { refletchSteps, repairProblemWords } from '../words/afterwards-words'
import { partKindWord } from '../words/part-kind-words'
import type { ArrowDialogProps } from './arrow-dialog'
import { FINISHED_ASKED } from './arrow-dialog'

/** Nothing of an arrow is replaced but the shaft, and then it is another arrow. */
const NEVER: readonly string[] = ['shaft', 'glue']

export const RepairDialog = (props: ArrowDialogProps) => <RepairOf {...props} only={null} />

/** The vanes alone, with the steps of it. */
export const RefletchDialog = (props: ArrowDialogProps) => <RepairOf {...props} only="vane" />

function RepairOf({ open, sheet, arrow, onClose, only }: ArrowDialogProps & { only: 'vane' | null }) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const now = useApp((s) => s.now)
  const [picked, setLine] = useState<string>()
  const [part, setPart] = useState<string>()
  const [reason, setReason] = useState('')
  const [raw, setRaw] = useState<{ value: number; text: string }>()
  const [said, setSaid] = useState('')
  const lines = sheet.plan.lines.flatMap((each) => {
    const was = sheet.parts.find(({ id }) => id === each.part)?.part
    return was === undefined || NEVER.includes(was.kind) ? [] : [{ id: each.id, part: each.part, was }]
  })
  const line = only === null ? picked : lines.find(({ was }) => was.kind === only)?.id
  const chosen = lines.find(({ id }) => id === line)
  const choices = chosen === undefined ? [] : partsOfKind(shelf, chosen.was.kind)

  function finished() {
    if (raw === undefined) return undefined
    const attempt = standing(arrow, 'finishedWeight').length + 1
    const taking = {
      point: 'finishedWeight',
      source: 'typed',
      scale: '',
      stable: true,
      attempt,
      takenAt: now(),
    } as const
    const answer = takeReading(raw.text, taking, true)
    return answer.kind === 'taken' ? answer.reading : undefined
  }
  async function repair() {
    const asked: RepairAsked = {
      arrow: arrow.id,
      line: line ?? '',
      part: part ?? chosen?.part ?? '',
      lot: lotsOfPart(shelf, part ?? chosen?.part ?? '').at(-1)?.id ?? null,
      what:
        only === 'vane'
          ? 'refletched'
          : chosen === undefined
            ? ''
            : `${partKindWord(chosen.was.kind).toLowerCase()} replaced`,
      reason,
      finished: finished(),
    }
    const [problem] = repairProblems(open.job, sheet, shelf, asked)
    if (problem !== undefined) return setSaid(`Not recorded. ${repairProblemWords(problem)}`)
    if (await repairArrow(store.getState, sheet, asked)) onClose()
    return undefined
  }
  return (
    <Dialog
      title={
        <Label>
          {only === 'vane' ? 'Refletch' : 'Repair'} no. {arrow.no}
        </Label>
      }
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => void repair()}>
            {only === 'vane' ? 'Record the refletch' : 'Record the repair'}
          </Button>
          <Button onClick={onClose}>Leave it</Button>
        </>
      }
    >
      <Notice level="look" lead="Before anything else:">
        flex and twist the shaft, head off, glasses on. One that creaks is retired, not repaired. Warm old glue gently:
        no flame, no solvent.
      </Notice>
      {only === 'vane' ? (
        <ol>
          {refletchSteps(sheet).map((step) => (
            <li key={step}>
              <Label>{step}</Label>
            </li>
          ))}
        </ol>
      ) : (
        <ChoiceField
          label="Part replaced"
          name="line"
          choices={lines.map(({ id, was }) => ({ value: id, label: partKindWord(was.kind) }))}
          value={line}
          onChoose={(value) => {
            setLine(value)
            setPart(undefined)
          }}
        />
      )}
      {chosen === undefined ? null : (
        <ChoiceField
          label="By"
          name="part"
          choices={choices.map(({ id, body }) => ({ value: id, label: body.name }))}
          value={part ?? chosen.part}
          onChoose={setPart}
        />
      )}
      <TextField label="Reason" name="reason" value={reason} onText={setReason} onCommit={setReason} />
      <QuantityField
        label="Finished weight now, head on"
        name="repairedWeight"
        asked={FINISHED_ASKED}
        value={raw?.value}
        onCommit={({ value, raw: text }) => setRaw({ value, text })}
        onClear={() => setRaw(undefined)}
      />
      <Status>{said}</Status>
    </Dialog>
  )
}
