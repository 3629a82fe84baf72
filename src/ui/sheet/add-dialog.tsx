/** A part for the sheet, new or in the place of another: from the shelf by kind, or typed in on the spot. */
import { useId, useMemo, useState } from 'react'
import type { Id } from '../../domain/records/scalars'
import { wordsIn } from '../../domain/records/words-in'
import type { PlanLine } from '../../domain/sheet/plan'
import { PART_KINDS } from '../../domain/stock/part'
import type { Part, PartKind } from '../../domain/stock/part'
import { lotsOfPart } from '../../domain/stock/lots-of-part'
import { partsOfKind } from '../../domain/stock/shelf'
import { addLine, addPartAndLine, setLine } from '../../state/sheet-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { PartForm } from '../parts/part-form'
import { partKindWord } from '../words/part-kind-words'
import look from './add-line.module.css'

/** A fletch is three or four of them; every other part is one. */
const USUAL_COUNT: Partial<Record<PartKind, number>> = { vane: 4, feather: 4 }
const SHOWN = 40 // parts before a word is asked for
const countOf = (kind: PartKind) => USUAL_COUNT[kind] ?? 1

interface AddDialogProps {
  job: Id
  /** The line whose part gives way, and the kind it is of. */
  instead?: { readonly line: PlanLine; readonly kind: PartKind }
  onClose: () => void
}

export function AddDialog({ job, instead, onClose }: AddDialogProps) {
  const store = useAppStore()
  const [kind, setKind] = useState(instead?.kind)
  const [typing, setTyping] = useState(false)
  const form = useId()
  // Of the same kind there are as many as before.
  const pieces = (of: PartKind) => (instead?.kind === of ? instead.line.count : countOf(of))
  const add = async (part: Id, lot: Id | null, of: PartKind) => {
    const count = pieces(of)
    const saved =
      instead === undefined
        ? addLine(store.getState(), job, part, lot, count)
        : setLine(store.getState(), job, { id: instead.line.id, part, lot, count })
    if (await saved) onClose()
  }
  const keep = async (part: Part) => {
    if (await addPartAndLine(store.getState(), job, part, pieces(part.kind), instead?.line.id)) onClose()
  }
  const act = instead === undefined ? 'Add' : 'Replace by'
  if (kind === undefined) {
    return (
      <Dialog title={instead === undefined ? 'Add a part: which kind' : 'Replace by: which kind'} onClose={onClose}>
        <ul className={look.kinds}>
          {PART_KINDS.map((each) => (
            <li key={each}>
              <Button onClick={() => setKind(each)}>{partKindWord(each)}</Button>
            </li>
          ))}
        </ul>
      </Dialog>
    )
  }
  if (typing) {
    return (
      <Dialog
        title={`${partKindWord(kind)}, typed in`}
        onClose={onClose}
        firm
        actions={
          <>
            <Button kind="primary" type="submit" form={form}>
              {instead === undefined ? 'Keep and add' : 'Keep and replace'}
            </Button>
            <Button onClick={onClose}>Cancel</Button>
          </>
        }
      >
        <PartForm id={form} kind={kind} onKeep={(part) => void keep(part)} />
      </Dialog>
    )
  }
  return (
    <Dialog
      title={`${act}: ${partKindWord(kind).toLowerCase()}`}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => setTyping(true)}>
            Type one in
          </Button>
          <Button onClick={() => setKind(undefined)}>Another kind</Button>
          <Button onClick={onClose}>Close</Button>
        </>
      }
    >
      <Shelved kind={kind} onAdd={(part, lot) => void add(part, lot, kind)} />
    </Dialog>
  )
}

function Shelved({ kind, onAdd }: { kind: PartKind; onAdd: (part: Id, lot: Id | null) => void }) {
  const shelf = useApp((s) => s.shelf)
  const [asked, setAsked] = useState('')
  const all = useMemo(() => partsOfKind(shelf, kind).filter(({ body }) => !body.discontinued), [shelf, kind])
  if (all.length === 0) return <p>None on the shelf yet.</p>
  const words = wordsIn(asked)
  const found = all.filter(({ body }) => {
    const own = wordsIn(body.name)
    return words.every((word) => own.some((each) => each.startsWith(word)))
  })
  const parts = found.slice(0, SHOWN)
  return (
    <>
      {all.length <= SHOWN ? null : (
        <TextField
          label="Find a part"
          name="find"
          inputMode="search"
          hint={
            found.length > SHOWN ? (
              <Label>
                the first {SHOWN} of {found.length} are shown
              </Label>
            ) : undefined
          }
          value={asked}
          onText={setAsked}
          onCommit={setAsked}
        />
      )}
      <ul className={look.parts}>
        {parts.map(({ id, body }) => {
          const lots = lotsOfPart(shelf, id)
          return (
            <li key={id} className={look.part}>
              <Label>{body.name}</Label>
              <span className={look.lots}>
                {lots.map((lot) => (
                  <Button key={lot.id} onClick={() => onAdd(id, lot.id)}>
                    <span className="unseen" data-label="">
                      {body.name},{' '}
                    </span>
                    <Label>lot {lot.body.code}</Label>
                  </Button>
                ))}
                <Button kind="text" onClick={() => onAdd(id, null)}>
                  <span className="unseen" data-label="">
                    {body.name},{' '}
                  </span>
                  lot unknown
                </Button>
              </span>
            </li>
          )
        })}
      </ul>
    </>
  )
}
