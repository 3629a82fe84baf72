/** One line of the sheet changed: another part or lot, how many pieces, its place in the order, or off the sheet. */
import { useState } from 'react'
import { Link } from 'wouter'
import type { Id } from '../../domain/records/scalars'
import type { PlanLine } from '../../domain/sheet/plan'
import type { Part } from '../../domain/stock/part'
import { isOffShelf, lotsForLine } from '../../domain/stock/lots-of-part'
import { removeLine, setLine } from '../../state/sheet-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button, buttonLook } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { Dialog } from '../controls/dialog'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { partKindWord } from '../words/part-kind-words'
import { lineMovedWords } from '../words/sheet-words'
import { lotChoiceWords } from '../words/stock-words'
import { AddDialog } from './add-dialog'
import look from './add-line.module.css'

const UNKNOWN = 'unknown'

interface LineDialogProps {
  job: Id
  line: PlanLine
  part: Part | undefined
  /** Where it stands among the lines as they are shown, from 0, and how many they are. */
  at: number
  of: number
  onMove: (to: number) => void
  onClose: () => void
}

export function LineDialog({ job, line, part, at, of, onMove, onClose }: LineDialogProps) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const [replacing, setReplacing] = useState(false)
  const [said, setSaid] = useState('')
  const set = (change: Partial<PlanLine>) => void setLine(store.getState(), job, { ...line, ...change })
  if (replacing && part !== undefined)
    return <AddDialog job={job} instead={{ line, kind: part.kind }} onClose={onClose} />
  const lots = part === undefined ? [] : lotsForLine(shelf, line)
  const move = (to: number) => {
    if (to < 0 || to >= of) return setSaid(to < 0 ? 'It is the first line already.' : 'It is the last line already.')
    onMove(to)
    setSaid(lineMovedWords(to, of))
    return undefined
  }
  return (
    <Dialog
      title={
        <Label>
          {part === undefined ? 'A part that is not in this book' : `${partKindWord(part.kind)}: ${part.name}`}
        </Label>
      }
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={onClose}>
            Done
          </Button>
          <Button onClick={() => void removeLine(store.getState(), job, line.id).then(onClose)}>
            Take it off the sheet
          </Button>
        </>
      }
    >
      {part === undefined ? null : (
        <p className={look.lots}>
          <Button onClick={() => setReplacing(true)}>Replace by another part</Button>
          <Link to={`/parts/${part.kind.replace(' ', '-')}/${line.part}`} className={buttonLook('text')}>
            Its catalogue figures and lots
          </Link>
        </p>
      )}
      <ChoiceField
        label="Lot"
        name="line.lot"
        choices={[
          ...lots.map(({ id, body }) => ({ value: id, label: lotChoiceWords(body, isOffShelf(shelf, id)) })),
          { value: UNKNOWN, label: 'lot unknown' },
        ]}
        value={line.lot ?? UNKNOWN}
        onChoose={(lot) => set({ lot: lot === UNKNOWN ? null : lot })}
      />
      {part?.kind === 'glue' ? null : (
        <QuantityField
          label="Pieces on one arrow"
          name="line.count"
          asked={{ unit: '1', min: 1, max: 12, decimals: 0, whole: true }}
          value={line.count}
          onCommit={({ value }) => set({ count: value })}
        />
      )}
      <p className={look.lots}>
        <Button onClick={() => move(at - 1)}>Move up</Button>
        <Button onClick={() => move(at + 1)}>Move down</Button>
      </p>
      <Status>
        <Label>{said}</Label>
      </Status>
    </Dialog>
  )
}
