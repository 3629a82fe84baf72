/** Every order under way, newest first, and the one next action: a new call. */
import { useState } from 'react'
import { Link, useLocation } from 'wouter'
import { STAGE_OF } from '../../domain/job/stage'
import type { JobView } from '../../domain/job/job-view'
import { Page } from '../app/page'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { EmptyState } from '../controls/empty-state'
import { Status } from '../controls/status'
import { showDay, showDayAndYear } from '../words/dates'
import { counted, showNumber } from '../words/format'
import { STATE_WORDS } from '../words/job-words'
import look from './jobs.module.css'

export default function JobsPage() {
  const jobs = useApp((s) => s.jobs)
  const newCall = useNewCall()
  const underWay = jobs.filter(({ state }) => state !== 'sent')
  const sent = jobs.filter(({ state }) => state === 'sent')
  const begin = (
    <Button kind="primary" onClick={newCall.begin}>
      New call
    </Button>
  )
  return (
    <Page
      title="Jobs"
      tab="Jobs"
      about={underWay.length === 0 ? undefined : <span data-label="">{counted(underWay.length, 'job')} under way</span>}
      aside={jobs.length === 0 ? undefined : begin}
    >
      <Status>{newCall.failed ? 'The call could not be saved, so it was not begun. Try again.' : ''}</Status>
      {jobs.length === 0 ? (
        <EmptyState title="No jobs yet" action={begin}>
          A job is one order: a client, a bow, a hunt and a set of arrows. It begins with the client on the phone.
        </EmptyState>
      ) : null}
      <JobList title="Under way" jobs={underWay} />
      <JobList title="Sent" jobs={sent} />
    </Page>
  )
}

function useNewCall() {
  const newJob = useApp((s) => s.newJob)
  const [, go] = useLocation()
  const [failed, setFailed] = useState(false)
  const begin = async () => {
    const id = await newJob('order')
    setFailed(id === null)
    if (id !== null) go(`/job/${id}/call`)
  }
  return { failed, begin: () => void begin() }
}

const JobList = ({ title, jobs }: { title: string; jobs: readonly JobView[] }) =>
  jobs.length === 0 ? null : (
    <section className={look.list} aria-label={title}>
      <h2 className={look.quiet}>{title}</h2>
      <ul>
        {jobs.map((job) => (
          <JobLine key={job.id} job={job} />
        ))}
      </ul>
    </section>
  )

function JobLine({ job }: { job: JobView }) {
  const { code, clientName, quarry, quantity, targetGr, state, open, shipOn, updated } = job
  const what = [quarry, counted(quantity, 'arrow'), targetGr === null ? '' : `${showNumber(targetGr, 0)} gr`]
  return (
    <li className={look.job} data-label="">
      <Link to={`/job/${job.id}`} className={look.name}>
        {clientName === '' ? 'Nobody named yet' : clientName}
      </Link>
      <span className={look.what}>{what.filter((each) => each !== '').join(', ')}</span>
      <span className={look.code}>{code}</span>
      <span className={open > 0 ? look.open : look.soft}>{open > 0 ? counted(open, 'open question') : ''}</span>
      <span className={look.state}>
        {STATE_WORDS[state]}
        <span className={look.soft}>
          {' '}
          {shipOn === null || STAGE_OF[state] === 'send'
            ? showDayAndYear(updated.slice(0, 10))
            : `ships ${showDay(shipOn)}`}
        </span>
      </span>
    </li>
  )
}
