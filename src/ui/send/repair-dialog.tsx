/** An arrow came back: which part, why, and what it weighs before anything is done to it. Its repair begins with that. */
import { useState } from 'react'
import { repairProblems } from '../../domain/send/repair'
import type { RepairAsked } from '../../domain/send/repair'
import { builtWeight, survivorWeights } from '../../domain/send/in-use'
import { lotsOfPart } from '../../domain/stock/lots-of-part'
import { partsOfKind } from '../../domain/stock/shelf'
import { beginRepairOf } from '../../state/repair-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { partKindWord } from '../words/part-kind-words'
import { isFletch, repairedWhat, repairProblemWords } from '../words/repair-words'
import type { ArrowDialogProps } from './arrow-dialog'
import { WEIGHED_ASKED } from './arrow-dialog'
import { useWeigh } from './use-weigh'

/** Nothing of an arrow is replaced but the shaft, and then it is another arrow. */
const NEVER: readonly string[] = ['shaft', 'glue']

export const RepairDialog = (props: ArrowDialogProps) => <RepairOf {...props} fletch={false} />

/** The fletch alone. */
export const RefletchDialog = (props: ArrowDialogProps) => <RepairOf {...props} fletch />

function RepairOf({ open, sheet, arrow, onClose, fletch }: ArrowDialogProps & { fletch: boolean }) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const { job } = open
  const [picked, setLine] = useState<string>()
  const [part, setPart] = useState<string>()
  const [reason, setReason] = useState('')
  const [said, setSaid] = useState('')
  const lastGr = survivorWeights(job).get(arrow.id) ?? builtWeight(job, arrow)
  const { value, setEntry, weigh } = useWeigh({ bench: job.bench!, arrow, sheet, lastGr })
  const lines = sheet.plan.lines.flatMap((each) => {
    const was = sheet.parts.find(({ id }) => id === each.part)?.part
    return was === undefined || NEVER.includes(was.kind) ? [] : [{ id: each.id, part: each.part, was }]
  })
  const line = fletch ? lines.find(({ was }) => isFletch(was.kind))?.id : picked
  const chosen = lines.find(({ id }) => id === line)
  const choices = chosen === undefined ? [] : partsOfKind(shelf, chosen.was.kind)

  async function begin() {
    const weighed = weigh()
    if (weighed.kind === 'said') return setSaid(weighed.said)
    const by = part ?? chosen?.part ?? ''
    const asked: RepairAsked = {
      arrow: arrow.id,
      line: line ?? '',
      part: by,
      lot: lotsOfPart(shelf, by).at(-1)?.id ?? null,
      what: chosen === undefined ? '' : repairedWhat(chosen.was.kind),
      reason,
      before: weighed.kind === 'taken' ? weighed.reading : undefined,
    }
    const app = store.getState()
    const [problem] = repairProblems(job, sheet, shelf, asked)
    if (problem !== undefined) return setSaid(`Not begun. ${repairProblemWords(problem, app.now())}`)
    if (await beginRepairOf(app, job, sheet, asked)) onClose()
    return undefined
  }
  return (
    <Dialog
      title={
        <Label>
          {fletch ? 'Refletch' : 'Repair'} no. {arrow.no}
        </Label>
      }
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => void begin()}>
            {fletch ? 'Begin the refletch' : 'Begin the repair'}
          </Button>
          <Button onClick={onClose}>Leave it</Button>
        </>
      }
    >
      <Notice level="look" lead="Before anything else:">
        flex and twist the shaft, head off, glasses on. One that creaks is retired, not repaired.
      </Notice>
      {fletch ? null : (
        <ChoiceField
          label="Part replaced"
          name="line"
          choices={lines.map(({ id, was }) => ({ value: id, label: partKindWord(was.kind) }))}
          value={line}
          onChoose={(id) => {
            setLine(id)
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
        label="Weight as it came back, head on"
        name="weightBefore"
        asked={WEIGHED_ASKED}
        value={value}
        onCommit={setEntry}
        onClear={() => setEntry(undefined)}
      />
      <Status>{said}</Status>
    </Dialog>
  )
}
