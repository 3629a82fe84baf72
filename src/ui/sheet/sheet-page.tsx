/** The plan: the elevation with its lines at the left, landing, full draw and figures at the right. */
import { lazy, Suspense, useState } from 'react'
import type { OpenJob } from '../../state/open-job'
import { linePlaces } from '../../domain/sheet/line-places'
import { lineWeights } from '../../domain/sheet/line-weights'
import { linesSince } from '../../domain/sheet/lines-since'
import { movedLine } from '../../domain/sheet/moved-line'
import { orderLines } from '../../state/sheet-actions'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { StageBar } from '../app/stage-bar'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { EmptyState } from '../controls/empty-state'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Elevation } from '../figures/elevation/elevation'
import { piecesOf } from '../figures/elevation/pieces-of'
import { rowsByPosition } from '../figures/elevation/rows-by-position'
import { Label } from '../figures/label'
import { NoSuchJob } from '../jobs/no-such-job'
import { useOpenJob } from '../jobs/use-open-job'
import { jobTab, jobTitle } from '../words/job-words'
import { partKindWord } from '../words/part-kind-words'
import { lineMovedWords, namedLineWords } from '../words/sheet-words'
import { AddLine } from './add-line'
import { FiguresPanel } from './figures-panel'
import { LineContent } from './line-content'
import { PlanFields } from './plan-fields'
import look from './sheet-page.module.css'
import { useSheet } from './use-sheet'

const SheetTools = lazy(async () => ({ default: (await import('./tools/sheet-tools')).SheetTools }))
const LandingPanel = lazy(async () => ({ default: (await import('./landing-panel')).LandingPanel }))
const LineDialog = lazy(async () => ({ default: (await import('./line-dialog')).LineDialog }))
const CutPanel = lazy(async () => ({ default: (await import('./cut-panel')).CutPanel }))
const FreezePanel = lazy(async () => ({ default: (await import('./freeze-panel')).FreezePanel }))
// Only a rebuild has a then.
const ThenAndNow = lazy(async () => ({ default: (await import('./then-and-now')).ThenAndNow }))

export default function SheetPage({ params }: { params: PageParams }) {
  const open = useOpenJob(params['id'] ?? '')
  if (open === undefined) return null
  return open === null ? <NoSuchJob /> : <SheetOf open={open} />
}

function SheetOf({ open }: { open: OpenJob }) {
  const opened = useSheet(open)
  const [chosen, setChosen] = useState<string | null>(null)
  const { sheet, worked, cut, problems, frozen, typing } = opened
  const { job } = open
  const name = open.client?.['name']
  const store = useAppStore()
  const [changing, setChanging] = useState<string>()
  const [moved, setMoved] = useState('')
  const weights = lineWeights(worked?.items ?? [])
  const places = worked === undefined ? undefined : linePlaces(worked.geometry)
  const pieces = worked === undefined ? [] : piecesOf(worked.geometry)
  const byHand = sheet.plan.order === 'by hand'
  const move = (order: readonly string[], line: string, to: number) => {
    setMoved(lineMovedWords(to, order.length))
    void orderLines(store.getState(), job.id, movedLine(order, line, to))
  }
  const since = frozen === undefined ? undefined : linesSince(frozen.sheet, sheet)
  const rows = sheet.plan.lines.map((line) => {
    const part = sheet.parts.find(({ id }) => id === line.part)?.part
    const lotCode = sheet.lots.find(({ id }) => id === line.lot)?.lot.code
    return {
      id: line.id,
      label: part === undefined ? 'Unknown part' : partKindWord(part.kind),
      content: (
        <LineContent
          job={job}
          line={line}
          part={part}
          lotCode={lotCode}
          weight={weights.get(line.id)}
          place={places?.get(line.id)}
          since={since?.changed.get(line.id)}
          onChange={setChanging}
        />
      ),
    }
  })
  const shown = (byHand ? rows : rowsByPosition(rows, pieces)).map(({ id }) => id)
  const changed = sheet.plan.lines.find(({ id }) => id === changing)
  return (
    <Page
      title={jobTitle(job, name)}
      tab={jobTab(job, name)}
      about={<span data-label="">sheet, version {sheet.version}, not frozen</span>}
      aside={<StageBar job={job.id} at="sheet" />}
    >
      <Suspense fallback={<div className={look.tools} />}>
        <SheetTools open={open} sheet={sheet} worked={worked} cut={cut} />
      </Suspense>
      <div className={look.page}>
        <div className={look.column}>
          <Panel title="The arrow" quiet aside={<AddLine job={job.id} />}>
            {rows.length === 0 ? (
              <EmptyState title="No parts on this sheet yet">
                Begin with the shaft, then the nock, the front end and the head.
              </EmptyState>
            ) : (
              <Elevation
                name="sheet.elevation"
                pieces={pieces}
                rows={rows}
                chosen={chosen}
                onChoose={setChosen}
                byHand={byHand}
                onMove={move}
              />
            )}
            {since === undefined || since.removed.length === 0 ? null : (
              <p className={look.removed}>
                <Label>Removed since it was frozen: {since.removed.map(namedLineWords).join('; ')}.</Label>
              </p>
            )}
            {rows.length < 2 ? null : (
              <p className={look.order}>
                To order the lines drag a name, or hold Alt and press an arrow key.{' '}
                {byHand ? (
                  <Button kind="text" onClick={() => void orderLines(store.getState(), job.id, [])}>
                    Order by position
                  </Button>
                ) : null}
              </p>
            )}
            <Status unseen>
              <Label>{moved}</Label>
            </Status>
            {changed === undefined ? null : (
              <Suspense fallback={null}>
                <LineDialog
                  job={job.id}
                  line={changed}
                  part={sheet.parts.find(({ id }) => id === changed.part)?.part}
                  at={shown.indexOf(changed.id)}
                  of={shown.length}
                  onMove={(to) => move(shown, changed.id, to)}
                  onClose={() => setChanging(undefined)}
                />
              </Suspense>
            )}
          </Panel>
          <PlanFields job={job} frozen={frozen?.sheet.plan} typing={typing} />
        </div>
        <div className={look.column}>
          {worked === undefined || job.of === null ? null : (
            <Suspense fallback={null}>
              <ThenAndNow asBuilt={job.of.asBuilt} sheet={sheet} worked={worked} />
            </Suspense>
          )}
          {worked === undefined ? null : (
            <Suspense fallback={null}>
              <LandingPanel worked={worked} was={frozen?.worked} quantity={sheet.plan.quantity} />
            </Suspense>
          )}
          {worked === undefined || cut === undefined ? null : (
            <Suspense fallback={null}>
              <CutPanel sheet={sheet} bench={job.bench} worked={worked} cut={cut} was={frozen?.cut} />
            </Suspense>
          )}
          {worked === undefined ? null : <FiguresPanel sheet={sheet} worked={worked} cut={cut} was={frozen?.worked} />}
          <Suspense fallback={null}>
            <FreezePanel open={open} sheet={sheet} problems={problems} />
          </Suspense>
        </div>
      </div>
    </Page>
  )
}
