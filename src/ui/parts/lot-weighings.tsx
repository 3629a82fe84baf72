/** Every weight of a lot, newest first; one that misleads is set aside with a reason and stays in sight. */
import { useState } from 'react'
import type { Id } from '../../domain/records/scalars'
import type { LotView } from '../../domain/stock/lot-view'
import { byTime } from '../../domain/stock/weighing'
import type { Weighing } from '../../domain/stock/weighing'
import { setWeightAside } from '../../state/lot-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Dialog } from '../controls/dialog'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { counted } from '../words/format'
import { weighingWords } from '../words/stock-words'
import look from './parts.module.css'

const NEWEST = 30

export function LotWeighings({ lot, name, view }: { lot: Id; name: string; view: LotView }) {
  const [asked, setAsked] = useState<Weighing>()
  const all: readonly (Weighing & { readonly reason?: string })[] = [...view.weighed, ...view.setAside]
    .filter(({ what }) => what === 'weight')
    .sort(byTime)
    .toReversed()
  if (all.length === 0) return null
  return (
    <details className={look.fold}>
      <summary>
        <Label>
          {counted(all.length, 'weighing')}
          {all.length > NEWEST ? `, the newest ${NEWEST}` : ''}
        </Label>
      </summary>
      <DataTable
        caption="Weighings"
        captionUnseen
        columns={[{ head: 'Taken' }, { head: 'Weight, gr', figures: true }, { head: 'Where it misleads' }]}
        rows={all.slice(0, NEWEST).map((each, i) => ({
          key: each.event,
          cells: [
            <Label key="at">{weighingWords(each)}</Label>,
            <Read
              key="w"
              name={`${name}.weighing.${i}`}
              value={each.weightGr}
              unit="gr"
              decimals={1}
              bare
              withdrawn={each.reason !== undefined}
            />,
            each.reason === undefined ? (
              <Button key="aside" kind="text" onClick={() => setAsked(each)}>
                Set aside
              </Button>
            ) : (
              <Label key="why">set aside: {each.reason}</Label>
            ),
          ],
        }))}
      />
      {asked === undefined ? null : <SetAside lot={lot} weighing={asked} onClose={() => setAsked(undefined)} />}
    </details>
  )
}

function SetAside({ lot, weighing, onClose }: { lot: Id; weighing: Weighing; onClose: () => void }) {
  const store = useAppStore()
  const [why, setWhy] = useState('')
  const [said, setSaid] = useState('')
  async function aside() {
    if (why.trim() === '') return setSaid('Say why it is set aside; the weight stays in the list with the reason.')
    if (await setWeightAside(store.getState(), lot, weighing.event, why.trim())) onClose()
    return undefined
  }
  return (
    <Dialog
      title="Set a weighing aside"
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => void aside()}>
            Set it aside
          </Button>
          <Button onClick={onClose}>Keep it</Button>
        </>
      }
    >
      <p>The lot no longer learns from it. It is not erased.</p>
      <TextField label="Why" name="why aside" value={why} onText={setWhy} onCommit={setWhy} />
      <Status>{said}</Status>
    </Dialog>
  )
}
