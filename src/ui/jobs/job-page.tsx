/** The front of a job: its four stages, each with how it stands, and every open question with who owes it. */
import type { OpenJob } from '../../state/open-job'
import { measuringItems, openQuestions } from '../../domain/call/open-questions'
import { stateOf } from '../../domain/job/stage'
import { questionOf } from '../../domain/call/questions'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { StageBar } from '../app/stage-bar'
import { buttonLook } from '../controls/button'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { TaskList } from '../controls/task-list'
import { STATE_WORDS, jobTab, jobTitle } from '../words/job-words'
import { showDay } from '../words/dates'
import { owedWords } from '../words/call/open-words'
import { QUESTION_WORDS } from '../words/call/question-words'
import { stageTasks } from '../words/stage-words'
import { Link } from 'wouter'
import look from './jobs.module.css'
import { NoSuchJob } from './no-such-job'
import { useOpenJob } from './use-open-job'

export default function JobPage({ params }: { params: PageParams }) {
  const open = useOpenJob(params['id'] ?? '')
  if (open === undefined) return null
  if (open === null) return <NoSuchJob />
  return <OpenJobPage open={open} />
}

function OpenJobPage({ open }: { open: OpenJob }) {
  const { job, client } = open
  const name = client?.['name']
  const owed = openQuestions(job.answers)
  const toMeasure = measuringItems(job.answers).length
  return (
    <Page
      title={jobTitle(job, name)}
      tab={jobTab(job, name)}
      about={<span data-label="">{STATE_WORDS[stateOf(job)]}</span>}
      aside={<StageBar job={job.id} />}
    >
      <div className={look.front}>
        <Panel title="Stages">
          <TaskList
            tasks={stageTasks(job).map(({ stage, note, ...task }) => ({
              key: stage,
              to: `/job/${job.id}/${stage}`,
              note: <Label>{note}</Label>,
              ...task,
            }))}
          />
        </Panel>
        <Panel title="Open questions">
          {owed.length === 0 ? (
            <p>Nothing is owed by anybody.</p>
          ) : (
            <TaskList
              tasks={owed.map(({ question, ...rest }) => ({
                key: question.id,
                title: QUESTION_WORDS[question.id].label,
                to: `/job/${job.id}/call/${questionOf(question.id).topic}`,
                note: owedWords(question.id, { ...rest, due: null }),
                state: rest.due === null ? 'open' : `by ${showDay(rest.due)}`,
                open: true,
              }))}
            />
          )}
          {toMeasure === 0 ? null : (
            <p className={look.after}>
              <Link to={`/print/measuring/${job.id}`} className={buttonLook('plain')}>
                Measuring sheet
              </Link>
            </p>
          )}
        </Panel>
      </div>
    </Page>
  )
}
