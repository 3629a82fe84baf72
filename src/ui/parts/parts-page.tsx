/** The shelf: every part by kind, what is on hand, and the way to add one. */
import { lazy, memo, Suspense, useDeferredValue, useId, useMemo, useState } from 'react'
import { Link } from 'wouter'
import { findOnShelf, indexShelf } from '../../domain/stock/find-on-shelf'
import type { ShelvedKind } from '../../domain/stock/find-on-shelf'
import { PART_KINDS } from '../../domain/stock/part'
import type { PartKind } from '../../domain/stock/part'
import { addPart } from '../../state/shop-actions'
import { Page } from '../app/page'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Dialog } from '../controls/dialog'
import { EmptyState } from '../controls/empty-state'
import { Panel } from '../controls/panel'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { showNumber } from '../words/format'
import { partKindWord } from '../words/part-kind-words'
import { catalogueWords } from '../words/stock-words'
import { FirstWeighing } from './first-weighing'
import { PartForm } from './part-form'
import look from './parts.module.css'

const PartTables = lazy(() => import('./part-tables'))
const SHOWN = 60 // rows of a kind before the rest is asked for

export default function PartsPage() {
  const shelf = useApp((s) => s.shelf)
  const [asked, setAsked] = useState('')
  const late = useDeferredValue(asked)
  const [adding, setAdding] = useState<PartKind | 'choose'>()
  const [files, setFiles] = useState(false)
  const index = useMemo(() => indexShelf(shelf), [shelf])
  const kinds = useMemo(() => findOnShelf(index, late), [index, late])
  return (
    <Page
      title="Parts"
      tab="Parts"
      aside={
        <span className={look.actions}>
          <Button onClick={() => setFiles(true)}>Tables in and out</Button>
          <Button onClick={() => setAdding('choose')}>Add a part</Button>
        </span>
      }
    >
      <div className={look.page}>
        <FirstWeighing />
        <TextField
          label="Find a part"
          name="find"
          inputMode="search"
          value={asked}
          onText={setAsked}
          onCommit={setAsked}
        />
        {kinds.length === 0 ? (
          <EmptyState
            title={asked === '' ? 'The shelf is empty' : 'No part by that name'}
            action={asked === '' ? <Button onClick={() => setAdding('choose')}>Add the first part</Button> : undefined}
          >
            Parts can be added here, brought in as a table, or typed in on a sheet as an arrow needs them. Weigh a few
            of each lot as it comes in: the forecast starts from what they really weigh.
          </EmptyState>
        ) : (
          kinds.map((each) => <KindPanel key={each.kind} {...each} />)
        )}
      </div>
      {adding === undefined ? null : <AddPart kind={adding} onKind={setAdding} onClose={() => setAdding(undefined)} />}
      {files ? (
        <Suspense fallback={null}>
          <PartTables onClose={() => setFiles(false)} />
        </Suspense>
      ) : null}
    </Page>
  )
}

const bewareOf = ({ held, part }: { held: boolean; part: { body: { discontinued?: boolean | undefined } } }): string =>
  [...(held ? ['a lot on hold'] : []), ...(part.body.discontinued ? ['no longer made'] : [])].join(', ')

const KindPanel = memo(function KindPanel({ kind, parts }: ShelvedKind) {
  const [all, setAll] = useState(false)
  const shown = all ? parts : parts.slice(0, SHOWN)
  const isAnyBewared = shown.some((each) => bewareOf(each) !== '')
  return (
    <Panel title={partKindWord(kind)} quiet>
      <DataTable
        caption={partKindWord(kind)}
        captionUnseen
        columns={[
          { head: 'Part' },
          { head: 'Catalogue, gr', figures: true },
          { head: 'On hand', figures: true },
          { head: 'Free', figures: true },
          // A column that says nothing of any part would only take a phone's room.
          ...(isAnyBewared ? [{ head: 'Beware' }] : []),
        ]}
        rows={shown.map(({ part: { id, body }, onHand, free, held }) => ({
          key: id,
          cells: [
            <Link key="name" to={`/parts/${kind.replace(' ', '-')}/${id}`}>
              <Label>{body.name}</Label>
            </Link>,
            <Label key="w">{catalogueWords(body)}</Label>,
            <Label key="h">{showNumber(onHand, 0)}</Label>,
            <Label key="f">{showNumber(free, 0)}</Label>,
            ...(isAnyBewared ? [bewareOf({ held, part: { body } })] : []),
          ],
        }))}
      />
      {shown.length === parts.length ? null : (
        <p className={look.actions}>
          <Button onClick={() => setAll(true)}>
            <Label>Show the other {parts.length - shown.length}</Label>
          </Button>
        </p>
      )}
    </Panel>
  )
})

interface AddPartProps {
  kind: PartKind | 'choose'
  onKind: (kind: PartKind) => void
  onClose: () => void
}

function AddPart({ kind, onKind, onClose }: AddPartProps) {
  const store = useAppStore()
  const form = useId()
  if (kind === 'choose') {
    return (
      <Dialog title="Add a part: which kind" onClose={onClose}>
        <ul className={look.kinds}>
          {PART_KINDS.map((each) => (
            <li key={each}>
              <Button onClick={() => onKind(each)}>{partKindWord(each)}</Button>
            </li>
          ))}
        </ul>
      </Dialog>
    )
  }
  return (
    <Dialog
      title={partKindWord(kind)}
      onClose={onClose}
      firm
      actions={
        <>
          <Button kind="primary" type="submit" form={form}>
            Keep this part
          </Button>
          <Button onClick={onClose}>Cancel</Button>
        </>
      }
    >
      <PartForm
        id={form}
        kind={kind}
        onKeep={(part) =>
          void addPart(store.getState(), part).then((saved) => {
            if (saved) onClose()
          })
        }
      />
    </Dialog>
  )
}
