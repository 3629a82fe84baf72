/** One part: its catalogue figures, its lots, and what each lot really weighs. */
import { useEffect, useState } from 'react'
import { Link } from 'wouter'
import type { Part } from '../../domain/stock/part'
import type { Standing } from '../../domain/stock/shelf'
import { lotsOf } from '../../domain/stock/lots-of-part'
import { showLotsOf } from '../../state/lot-actions'
import { changePart } from '../../state/shop-actions'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { EmptyState } from '../controls/empty-state'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { VersionsApart } from '../controls/versions-apart'
import { partKindWord } from '../words/part-kind-words'
import { Alternates } from './alternates'
import { JointsLearned } from './joints-learned'
import { LotPanel } from './lot-panel'
import { PartForm } from './part-form'
import look from './parts.module.css'
import { ReceiveLot } from './receive-lot'

export default function PartPage({ params }: { params: PageParams }) {
  const shelf = useApp((s) => s.shelf)
  const store = useAppStore()
  const id = params['id'] ?? ''
  const part = shelf.parts.get(id)
  const repository = useApp((s) => s.repository)
  const [said, setSaid] = useState('')
  useEffect(() => void showLotsOf(store.getState(), id), [store, repository, id])
  if (part === undefined) {
    return (
      <Page title="No such part" tab="No such part">
        <EmptyState title="This book has no such part" action={<Link to="/parts">Go to the parts</Link>} />
      </Page>
    )
  }
  return (
    <Page title={part.body.name} tab={part.body.name} about={partKindWord(part.body.kind)}>
      <div className={look.page}>
        <VersionsApart kind="part" subject={part.id} what="this part" />
        {lotsOf(shelf, part.id).map((lot) => (
          <LotPanel key={lot.id} part={part.body} lot={lot} view={shelf.lotViews.get(lot.id)} />
        ))}
        {part.body.kind === 'glue' ? <JointsLearned part={part.id} view={shelf.lotViews.get(part.id)} /> : null}
        {part.body.discontinued ? (
          <Notice level="note">It is no longer made. What is left of it can still be used.</Notice>
        ) : null}
        <ReceiveLot part={part} />
        {part.body.kind === 'glue' ? null : <Alternates part={part} />}
        <EditPart key={part.hash} part={part} said={said} onSaid={setSaid} />
      </div>
    </Page>
  )
}

interface EditPartProps {
  part: Standing<Part>
  /** Kept by the page: a kept part is edited afresh. */
  said: string
  onSaid: (words: string) => void
}

function EditPart({ part, said, onSaid }: EditPartProps) {
  const store = useAppStore()
  const [reason, setReason] = useState('')
  const change = (body: Part, why: string) => void changePart(store.getState(), part, body, why)
  return (
    <Panel title="Catalogue figures" quiet>
      <TextField label="Why they change" name="why" value={reason} onText={setReason} onCommit={setReason} />
      <PartForm
        kind={part.body.kind}
        before={part.body}
        action="Keep as a new version"
        onKeep={(body) => {
          if (reason.trim() === '') {
            onSaid('A change needs its reason, at the top of these figures; sheets already frozen keep the old ones.')
          } else {
            void changePart(store.getState(), part, body, reason.trim()).then((saved) => {
              if (saved) onSaid('Kept. Sheets already frozen keep the old figures.')
            })
          }
        }}
      />
      <Status>{said}</Status>
      <p className={look.actions}>
        <Button
          onClick={() => change({ ...part.body, discontinued: !part.body.discontinued }, 'made or no longer made')}
        >
          {part.body.discontinued ? 'It is made again' : 'No longer made'}
        </Button>
      </p>
    </Panel>
  )
}
