/** The set leaves: inspected against its sheet, signed off with counts that add up, packed and sent. */
import { lazy, Suspense, useState } from 'react'
import { Link } from 'wouter'
import type { Bench } from '../../domain/bench/bench'
import { countsOf, signOffProblems } from '../../domain/bench/sign-off'
import { codeOf } from '../../domain/records/code'
import { PACKING } from '../../domain/send/inspection'
import type { Sheet } from '../../domain/sheet/sheet'
import type { OpenJob } from '../../state/open-job'
import { markSent, signOffSet, tickPacked } from '../../state/send-actions'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { StageBar } from '../app/stage-bar'
import { useApp, useAppStore } from '../app/use-app'
import { Deviations } from '../bench/deviations'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { EmptyState } from '../controls/empty-state'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { NoSuchJob } from '../jobs/no-such-job'
import { useOpenJob } from '../jobs/use-open-job'
import { showDay, showMoment } from '../words/dates'
import { jobTab, jobTitle } from '../words/job-words'
import { signOffProblemWords } from '../words/send-words'
import { Inspected } from './inspected'
import look from './send.module.css'

const InterchangePanel = lazy(() => import('./interchange-panel'))
const Afterwards = lazy(async () => ({ default: (await import('./afterwards')).Afterwards }))

export default function SendPage({ params }: { params: PageParams }) {
  const open = useOpenJob(params['id'] ?? '')
  if (open === undefined) return null
  if (open === null) return <NoSuchJob />
  const { job } = open
  const name = open.client?.['name']
  const sheet = job.bench === null ? undefined : open.sheets.get(job.bench.sheet)
  return (
    <Page title={jobTitle(job, name)} tab={jobTab(job, name)} about="send" aside={<StageBar job={job.id} at="send" />}>
      {job.bench === null || sheet === undefined ? (
        <EmptyState title="No set to send yet" action={<Link to={`/job/${job.id}/bench`}>Go to the bench</Link>}>
          A set is inspected, signed off and packed here once it is built.{' '}
          <Link to={`/job/${job.id}/kit`}>Send a test kit first</Link>
        </EmptyState>
      ) : (
        <div className={look.page}>
          <Inspected bench={job.bench} sheet={sheet} />
          <AnyHead bench={job.bench} sheet={sheet} />
          <SignOff open={open} bench={job.bench} sheet={sheet} />
          <Box open={open} bench={job.bench} />
          {job.signedOff.length === 0 ? null : (
            <Suspense fallback={null}>
              <Afterwards open={open} sheet={sheet} />
            </Suspense>
          )}
        </div>
      )}
    </Page>
  )
}

/** Worked out when it is asked for. */
function AnyHead({ bench, sheet }: { bench: Bench; sheet: Sheet }) {
  const [isOpen, setOpen] = useState(false)
  return (
    <Panel title="Any head on any arrow" quiet>
      {isOpen ? (
        <Suspense fallback={null}>
          <InterchangePanel bench={bench} sheet={sheet} />
        </Suspense>
      ) : (
        <>
          <p>What the worst of them would weigh, field points included, and which head goes best on which arrow.</p>
          <Button onClick={() => setOpen(true)}>Work it out</Button>
        </>
      )}
    </Panel>
  )
}

function SignOff({ open, bench, sheet }: { open: OpenJob; bench: Bench; sheet: Sheet }) {
  const store = useAppStore()
  const [asked, setAsked] = useState(false)
  const { job } = open
  const problems = signOffProblems(job, sheet, open.events)
  const counts = countsOf(bench)
  const last = job.signedOff.at(-1)
  async function sign() {
    setAsked(true)
    if (problems.length === 0) await signOffSet(store.getState(), job, sheet)
  }
  return (
    <Panel title="Sign off" quiet>
      <p>
        <Label>
          Ordered {sheet.plan.quantity}, started {counts.started}, scrapped {counts.scrapped},{' '}
          {last === undefined ? 'to be accepted' : 'accepted'} {counts.accepted}.
        </Label>
      </p>
      <Deviations job={job} events={open.events} bench={bench} ordered={sheet.plan.quantity} />
      {last === undefined ? null : (
        <p>
          <Label>
            Signed off as version {last.version}, {showMoment(last.at)}, by {last.by}. As-built record{' '}
            {codeOf(last.asBuilt)}.
          </Label>{' '}
          <Link to={`/book/${last.asBuilt}`}>Open it in the book</Link>
        </p>
      )}
      {asked && problems.length > 0 ? (
        <div role="alert">
          <p>Not signed off yet:</p>
          {problems.map((problem, at) => (
            // The same code may come for several arrows.
            <Notice key={`${problem.code}.${at}`} level="stop">
              <Label>{signOffProblemWords(problem)}</Label>
            </Notice>
          ))}
        </div>
      ) : null}
      {last === undefined ? (
        <Button kind="primary" onClick={() => void sign()}>
          Sign off the set
        </Button>
      ) : null}
    </Panel>
  )
}

function Box({ open, bench }: { open: OpenJob; bench: Bench }) {
  const store = useAppStore()
  const now = useApp((s) => s.now)
  const [said, setSaid] = useState('')
  const { job } = open
  const last = job.signedOff.at(-1)
  const sent = job.sent.at(-1)
  const count = countsOf(bench).accepted
  async function send() {
    if (last === undefined) return setSaid('Not sent. The set is signed off first; then it may leave.')
    await markSent(store.getState(), job, now().slice(0, 10), count)
    return undefined
  }
  return (
    <Panel title="The box" quiet>
      <ul className={look.packing}>
        {PACKING.map((item) => (
          <li key={item}>
            <label>
              <input
                type="checkbox"
                checked={job.packed.includes(item)}
                onChange={(event) => void tickPacked(store.getState(), job, item, event.target.checked)}
              />{' '}
              {item}
            </label>
          </li>
        ))}
      </ul>
      <p className={look.prints}>
        <Link to={`/print/client-sheet/${job.id}`}>Print the client sheet</Link>
        <Link to={`/print/guide/${job.id}`}>Print the page for the guide</Link>
        <Link to={`/print/certificate/${job.id}`}>Print the certificate</Link>
        <Link to={`/print/packing/${job.id}`}>Print the packing list</Link>
        <Link to={`/print/labels/${job.id}`}>Print label and tags</Link>
        <Link to={`/print/build-sheet/${bench.sheet}`}>Print the build sheet</Link>
      </p>
      {sent === undefined ? (
        <Button kind={last === undefined ? 'plain' : 'primary'} onClick={() => void send()}>
          Mark as sent today
        </Button>
      ) : (
        <p>
          <Label>
            Sent {showDay(sent.on)}, {sent.count} arrows.
          </Label>
        </p>
      )}
      <Status>{said}</Status>
    </Panel>
  )
}
