/** Everything one arrow was read to, oldest first. A correction appends; the old reading stays in sight, struck through. */
import { useState } from 'react'
import type { BenchArrow } from '../../domain/bench/bench'
import type { KeptReading } from '../../domain/bench/built'
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { Step } from '../../domain/bench/route'
import { takeReading } from '../../domain/bench/take-reading'
import type { Job } from '../../domain/job/job'
import { correctReading, scrapArrow } from '../../state/bench-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { DataTable } from '../controls/data-table'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { pointInLine, pointWord, refusedWords } from '../words/bench-words'
import { showMoment } from '../words/dates'
import look from './bench.module.css'

export default function History({ job, arrow, step }: { job: Job; arrow: BenchArrow; step: Step }) {
  const [correcting, setCorrecting] = useState<KeptReading>()
  const [scrapping, setScrapping] = useState(false)
  const [isOpen, setOpen] = useState(false)
  return (
    <details className={look.section} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary data-label="">Everything read of no. {arrow.no}, and its corrections</summary>
      {isOpen ? <Readings arrow={arrow} onCorrect={setCorrecting} /> : null}
      <p>
        <Button onClick={() => setScrapping(true)}>
          <span data-label="">Scrap no. {arrow.no}</span>
        </Button>
      </p>
      {correcting === undefined ? null : (
        <CorrectDialog job={job} arrow={arrow} step={step} kept={correcting} onClose={() => setCorrecting(undefined)} />
      )}
      {scrapping ? <ScrapDialog job={job} arrow={arrow} onClose={() => setScrapping(false)} /> : null}
    </details>
  )
}

/** Made only while it is looked at: by the end an arrow has forty rows. */
function Readings({ arrow, onCorrect }: { arrow: BenchArrow; onCorrect: (kept: KeptReading) => void }) {
  return (
    <DataTable
      caption="Oldest first"
      captionUnseen
      columns={[
        { head: 'Reading' },
        { head: 'Value', figures: true },
        { head: 'Who, when, how' },
        { head: 'Where it is wrong' },
      ]}
      rows={arrow.readings.map((kept) => ({
        key: kept.event,
        cells: [
          <Label key="p">{pointWord(kept.reading.point)}</Label>,
          <Read
            key="v"
            name={`bench.${arrow.no}.history.${kept.event.slice(0, 8)}`}
            value={kept.reading.value}
            unit={kept.reading.unit}
            decimals={DATA_POINTS[kept.reading.point].decimals}
            withdrawn={kept.withdrawn !== null}
          />,
          <Label key="w">
            {kept.by}, {showMoment(kept.reading.takenAt)}, {kept.reading.source}
            {kept.withdrawn === null ? '' : `; withdrawn: ${kept.withdrawn.reason}`}
          </Label>,
          kept.withdrawn === null ? (
            <Button key="c" kind="text" onClick={() => onCorrect(kept)}>
              Correct
              <span className="unseen" data-label="">
                {' '}
                {pointWord(kept.reading.point)}
              </span>
            </Button>
          ) : null,
        ],
      }))}
    />
  )
}

interface CorrectProps {
  job: Job
  arrow: BenchArrow
  step: Step
  kept: KeptReading
  onClose: () => void
}

function CorrectDialog({ job, arrow, step, kept, onClose }: CorrectProps) {
  const store = useAppStore()
  const [text, setText] = useState('')
  const [reason, setReason] = useState('')
  const [problem, setProblem] = useState('')
  const { point } = kept.reading
  const label = pointWord(point)
  async function keep() {
    const app = store.getState()
    const taking = {
      point,
      source: 'typed' as const,
      scale: kept.reading.scale,
      stable: true,
      attempt: kept.reading.attempt + 1,
      takenAt: app.now(),
    }
    const answer = takeReading(text, taking, true)
    if (answer.kind !== 'taken') return setProblem(refusedWords(label, answer, point))
    if (reason.trim() === '') return setProblem('Why is it corrected? The old reading stays, and so must the reason.')
    const at = { job: job.id, arrow: arrow.id, step: step.key }
    if (await correctReading(app, at, kept.event, answer.reading, reason.trim())) onClose()
  }
  return (
    <Dialog
      title={<span data-label="">{`Correct no. ${arrow.no}, ${pointInLine(point)}`}</span>}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => void keep()}>
            Keep the correction
          </Button>
          <Button onClick={onClose}>Cancel</Button>
        </>
      }
    >
      <p data-label="">It says {kept.reading.raw}.</p>
      <TextField label="It should say" name="should" value={text} onText={setText} onCommit={setText} />
      <TextField label="Why" name="reason" value={reason} onText={setReason} onCommit={setReason} />
      {problem === '' ? null : (
        <Notice level="stop">
          <span data-label="">{problem}</span>
        </Notice>
      )}
    </Dialog>
  )
}

function ScrapDialog({ job, arrow, onClose }: { job: Job; arrow: BenchArrow; onClose: () => void }) {
  const store = useAppStore()
  const [cause, setCause] = useState('')
  const [said, setSaid] = useState('')
  const scrap = (replace: boolean) => {
    if (cause.trim() === '') return setSaid('Scrapping needs its cause; it is kept with the arrow.')
    void scrapArrow(store.getState(), job, arrow, cause.trim(), replace).then((saved) => {
      if (saved) onClose()
    })
    return undefined
  }
  return (
    <Dialog
      title={<span data-label="">Scrap no. {arrow.no}</span>}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => scrap(true)}>
            Scrap it, build another
          </Button>
          <Button onClick={() => scrap(false)}>Scrap it</Button>
          <Button onClick={onClose}>Cancel</Button>
        </>
      }
    >
      <TextField label="Cause" name="cause" value={cause} onText={setCause} onCommit={setCause} />
      <Status>{said}</Status>
    </Dialog>
  )
}
