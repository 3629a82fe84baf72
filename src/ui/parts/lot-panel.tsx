/** One lot: what it holds, what it really weighs, who used it, and what can be done with it. */
import { useState } from 'react'
import { Link } from 'wouter'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import type { Lot } from '../../domain/stock/lot'
import { lotExpectation } from '../../domain/stock/lot-expectation'
import type { LotView } from '../../domain/stock/lot-view'
import type { Part } from '../../domain/stock/part'
import type { Standing } from '../../domain/stock/shelf'
import { changeLot, holdLot, takeStock } from '../../state/lot-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Figure, FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { entryWords } from '../words/entry-words'
import { counted } from '../words/format'
import { buildWords, countWords, standsWords } from '../words/stock-words'
import { LotCharts } from './lot-charts'
import { VersionsApart } from '../controls/versions-apart'
import { LotWeighings } from './lot-weighings'
import look from './parts.module.css'
import { WeighingSession } from './weighing-session'

interface LotProps {
  part: Part
  lot: Standing<Lot>
  view: LotView | undefined
}

export function LotPanel({ part, lot, view }: LotProps) {
  const expected = lotExpectation(part, view)
  const weighed = (view?.weighed ?? []).filter(({ what }) => what === 'weight')
  const name = `lot.${lot.body.code}`
  // Decided once: the session stays open while its first weights come in.
  const [isFirst] = useState(weighed.length === 0)
  return (
    <Panel title={<Label>Lot {lot.body.code}</Label>}>
      <p className={look.stands}>
        <Label>{standsWords(lot.body, view)}</Label>
      </p>
      <VersionsApart kind="lot" subject={lot.id} what="this lot" />
      {lot.body.hold === undefined ? null : (
        <Notice level="look">
          <Label>On hold: {lot.body.hold}. It is offered nowhere until it is released.</Label>
        </Notice>
      )}
      {part.kind === 'glue' ? (
        <Opened lot={lot} />
      ) : (
        <>
          <FigureList>
            <Figure
              name={`${name}.expected`}
              label="The next one is expected to weigh"
              of={expected.ok ? { ...expected, value: expected.value.estimate } : expected}
              unit="gr"
              decimals={2}
              note={<Label>{weighed.length === 0 ? 'catalogue' : `from ${counted(weighed.length, 'weighing')}`}</Label>}
            />
          </FigureList>
          {view === undefined ? null : <LotCharts name={name} part={part} view={view} />}
          <details className={look.fold} open={isFirst}>
            <summary>Weigh some of it</summary>
            <WeighingSession part={part} lot={lot} view={view} />
          </details>
          {view === undefined ? null : <LotWeighings lot={lot.id} name={name} view={view} />}
          <Numbered lot={lot.body} name={name} />
        </>
      )}
      <Builds view={view} />
      <StockTake lot={lot} onHand={view?.onHand ?? 0} />
      <Hold lot={lot} />
    </Panel>
  )
}

/** A glue ages from the day it is opened. */
function Opened({ lot }: { lot: Standing<Lot> }) {
  const store = useAppStore()
  const today = useApp((s) => s.now)().slice(0, 10)
  const isPast = lot.body.expiresOn !== undefined && lot.body.expiresOn < today
  return (
    <>
      {isPast ? (
        <Notice level="look">It is past the day it was good until. Test a joint before you trust it.</Notice>
      ) : null}
      {lot.body.openedOn === undefined ? (
        <p className={look.actions}>
          <Button onClick={() => void changeLot(store.getState(), lot, { openedOn: today })}>Opened today</Button>
        </p>
      ) : null}
    </>
  )
}

function Numbered({ lot, name }: { lot: Lot; name: string }) {
  if (lot.numbered.length === 0) return null
  return (
    <details className={look.fold}>
      <summary>
        <Label>{counted(lot.numbered.length, 'numbered piece')}</Label>
      </summary>
      <DataTable
        caption="Numbered pieces"
        captionUnseen
        columns={[{ head: 'No.' }, { head: 'Weight, gr', figures: true }]}
        rows={lot.numbered.map(({ no, weightGr }) => ({
          key: no,
          cells: [
            <Label key="no">{no}</Label>,
            <Read key="w" name={`${name}.${no}`} value={weightGr} unit="gr" decimals={1} bare />,
          ],
        }))}
      />
    </details>
  )
}

function Builds({ view }: { view: LotView | undefined }) {
  const jobs = view?.jobs ?? []
  if (jobs.length === 0) return null
  return (
    <details className={look.fold}>
      <summary>
        <Label>Which builds hold it or used it: {jobs.length}</Label>
      </summary>
      <ul className={look.builds}>
        {jobs.map((share) => (
          <li key={share.job}>
            <Link to={`/job/${share.job}`}>
              <Label>{share.code}</Label>
            </Link>{' '}
            <Label>{buildWords(share)}</Label>
          </li>
        ))}
      </ul>
    </details>
  )
}

const FOUND = { unit: '1', min: 0, max: 100_000, whole: true } as const

function StockTake({ lot, onHand }: { lot: Standing<Lot>; onHand: number }) {
  const store = useAppStore()
  const [text, setText] = useState('')
  const [said, setSaid] = useState('')
  async function count() {
    const entry = parseQuantity(text, FOUND)
    if (entry.kind === 'problem') return setSaid(entryWords('Pieces counted', entry.problem, text, FOUND))
    if (await takeStock(store.getState(), lot, entry.value, onHand)) setSaid(countWords(entry.value, onHand))
    return undefined
  }
  return (
    <details className={look.fold}>
      <summary>Count it</summary>
      <TextField
        label="Pieces counted"
        name="counted"
        hint="all that lie on the shelf, reserved ones too"
        value={text}
        onText={setText}
        onCommit={setText}
      />
      <p className={look.actions}>
        <Button onClick={() => void count()}>Keep the count</Button>
        <Label>
          <Status>{said}</Status>
        </Label>
      </p>
    </details>
  )
}

function Hold({ lot }: { lot: Standing<Lot> }) {
  const store = useAppStore()
  const [why, setWhy] = useState('')
  const [said, setSaid] = useState('')
  if (lot.body.hold !== undefined) {
    return (
      <p className={look.actions}>
        <Button onClick={() => void holdLot(store.getState(), lot, undefined)}>Release it</Button>
      </p>
    )
  }
  return (
    <details className={look.fold}>
      <summary>Put it on hold</summary>
      <TextField label="Reason to hold it" name="hold" value={why} onText={setWhy} onCommit={setWhy} />
      <p className={look.actions}>
        <Button
          onClick={() => {
            if (why.trim() === '') setSaid('A hold needs its reason: the bench will be shown it.')
            else void holdLot(store.getState(), lot, why.trim())
          }}
        >
          Put on hold
        </Button>
        <Status>{said}</Status>
      </p>
    </details>
  )
}
