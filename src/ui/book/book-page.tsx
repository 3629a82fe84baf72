/** Every job and every build, found by client, quarry, bow, weight, day, lot or label code. */
import { useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { JobView } from '../../domain/job/job-view'
import { codeAsked } from '../../domain/book/code-asked'
import { plainCode } from '../../domain/records/code'
import { dayAsked, wordsAsked } from '../../domain/records/words-in'
import { Page } from '../app/page'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { EmptyState } from '../controls/empty-state'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { showDayAndYear } from '../words/dates'
import { listedWords, noSuchArrowWords } from '../words/book-words'
import { STATE_WORDS } from '../words/job-words'
import look from './book.module.css'

const PAGE = 50 // rows shown at first, and so many more each time

/** One page of what was found, and how much there is. The list of every job stands at once, as the store has it. */
function useFound(asked: string, jobs: readonly JobView[]) {
  const repository = useApp((s) => s.repository)
  const [pages, setPages] = useState({ asked, count: 1 })
  const [found, setFound] = useState<{ readonly jobs: readonly JobView[]; readonly of: number }>()
  const count = pages.asked === asked ? pages.count : 1
  useEffect(() => {
    let gone = false
    const ask = async () => {
      const answer = await repository?.findJobs(askedWords(asked), PAGE * count)
      if (!gone) setFound(answer)
    }
    void ask()
    return () => {
      gone = true
    }
  }, [asked, count, repository, jobs])
  const now = found ?? { jobs: jobs.slice(0, PAGE), of: jobs.length }
  return { found: now, more: () => setPages({ asked, count: count + 1 }) }
}

function askedWords(asked: string): readonly string[] {
  const code = dayAsked(asked) === undefined ? codeAsked(asked) : undefined // some days would read as the code of a record
  return code === undefined ? wordsAsked(asked) : [code.word]
}

export default function BookPage() {
  const jobs = useApp((s) => s.jobs)
  const repository = useApp((s) => s.repository)
  const [, go] = useLocation()
  const [asked, setAsked] = useState('')
  const { found, more } = useFound(asked, jobs)
  const rows = found.jobs
  const [said, setSaid] = useState('')
  /** A code and Enter, as a scanner types it, opens the one build it names. */
  async function take() {
    const code = codeAsked(asked)
    if (code === undefined || repository === null) return
    const [job, ...others] = (await repository.findJobs([code.word], 2)).jobs
    if (job === undefined || others.length > 0) return
    if (code.arrow !== undefined) {
      const arrows = await repository.arrowViews(job.id)
      if (!arrows.some(({ no }) => no === code.arrow)) return setSaid(noSuchArrowWords(job.code, code.arrow))
    }
    const build = job.builds.find((each) => plainCode(each.code).toLowerCase() === code.word) ?? job.builds.at(-1)
    if (build !== undefined) go(`/book/${build.asBuilt}`)
  }
  return (
    <Page title="Book" tab="Book">
      <div className={look.page}>
        <search>
          <form
            onSubmit={(event) => {
              event.preventDefault()
              void take()
            }}
          >
            <TextField
              label="Find by client, quarry, bow, weight, day, lot or label code"
              name="find"
              inputMode="search"
              value={asked}
              onText={(text) => {
                setSaid('')
                setAsked(text)
              }}
              onCommit={setAsked}
            />
          </form>
          <Status>{said}</Status>
        </search>
        {rows.length === 0 ? (
          <EmptyState title={asked === '' ? 'Nothing in the book yet' : 'Nothing found'}>
            {asked === ''
              ? 'Every job and every finished build stands here, for as long as the book is kept.'
              : 'Try fewer letters, or the code on the label.'}
          </EmptyState>
        ) : (
          <>
            <output className={look.count} data-label="">
              {listedWords(rows.length, found.of, asked)}
            </output>
            <DataTable
              caption={asked === '' ? 'Last changed first' : 'Last opened first'}
              captionUnseen
              blocks
              columns={[{ head: 'Job' }, { head: 'Client' }, { head: 'For' }, { head: 'Stands' }, { head: 'Builds' }]}
              rows={rows.map((job) => ({
                key: job.id,
                cells: [
                  <Link key="job" to={`/job/${job.id}`}>
                    <Label>{job.code}</Label>
                  </Link>,
                  <Label key="client">{job.clientName || 'no client yet'}</Label>,
                  <Label key="for">
                    {job.quarry || '–'}
                    {job.targetGr === null ? '' : `, ${job.targetGr} gr`}
                  </Label>,
                  <Label key="state">
                    {STATE_WORDS[job.state]}, {showDayAndYear(job.updated.slice(0, 10))}
                  </Label>,
                  <span key="builds" className={look.builds}>
                    {job.builds.length === 0 ? '–' : null}
                    {job.builds.map((build) => (
                      <span key={build.asBuilt} className={look.build}>
                        <Link to={`/book/${build.asBuilt}`}>
                          <Label>{build.code}</Label>
                        </Link>
                        <Link to={`/book/${build.asBuilt}/again`}>
                          Build this again
                          <span className="unseen" data-label="">
                            {' '}
                            {build.code}
                          </span>
                        </Link>
                      </span>
                    ))}
                  </span>,
                ],
              }))}
            />
            {rows.length < found.of ? <Button onClick={more}>Show more</Button> : null}
          </>
        )}
      </div>
    </Page>
  )
}
