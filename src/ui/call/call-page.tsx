/** The call: topics at the left, questions in the middle, what follows at the right; on a phone one topic at a time. */
import { lazy, Suspense, useEffect, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { Contradiction } from '../../domain/call/contradiction'
import type { Topic } from '../../domain/call/questions'
import { TOPICS, questionOf } from '../../domain/call/questions'
import type { OpenJob } from '../../state/open-job'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { StageBar } from '../app/stage-bar'
import { buttonLook } from '../controls/button'
import { steadyPress } from '../controls/steady-press'
import { NoSuchJob } from '../jobs/no-such-job'
import { useOpenJob } from '../jobs/use-open-job'
import { jobTab, jobTitle, openCountWords } from '../words/job-words'
import { TOPIC_WORDS } from '../words/call/question-words'
import look from './call.module.css'
import { ClientTopic } from './client-topic'
import { ContradictionList, ContradictionsAloud } from './contradiction-list'
import { FollowsPanel } from './follows-panel'
import { PinnedStrip } from './pinned-strip'
import { TopicNav } from './topic-nav'
import { TopicQuestions } from './topic-questions'
import { useCall } from './use-call'

const isTopic = (text: string | undefined): text is Topic => TOPICS.some((topic) => topic === text)

const ReadBack = lazy(async () => ({ default: (await import('./read-back')).ReadBack }))

export default function CallPage({ params }: { params: PageParams }) {
  const open = useOpenJob(params['id'] ?? '')
  if (open === undefined) return null
  if (open === null) return <NoSuchJob />
  return <OpenCall open={open} address={params['topic']} />
}

function OpenCall({ open, address }: { open: OpenJob; address: string | undefined }) {
  const call = useCall(open)
  const [, go] = useLocation()
  const [begin, setBegin] = useState(isBlank(open) ? 1 : 0)
  const begunRef = useRef(0)
  const beginHere = () => setBegin((times) => times + 1)
  const { job, follows } = call
  const topic = isTopic(address) ? address : 'hunt'
  const isReadBack = address === 'read-back'
  const name = open.client?.['name']
  const shown = useRef(address)
  useEffect(() => {
    // Another topic is read from its beginning; the page itself stays, and with it where it was scrolled to.
    if (shown.current !== address) document.documentElement.scrollTop = 0
    shown.current = address
  }, [address])
  const client = (hasNext: boolean) => (
    <ClientTopic call={call} fields={open.client} hasNext={hasNext} onNamed={beginHere} />
  )
  const next = TOPICS[TOPICS.indexOf(topic) + 1]
  const goOn = () => {
    beginHere()
    go(`/job/${job.id}/call/${next ?? 'read-back'}`)
  }

  return (
    <Page
      title={jobTitle(job, name)}
      tab={jobTab(job, name)}
      about={<span data-label="">{openCountWords(call.answers)}</span>}
      aside={<StageBar job={job.id} at="call" />}
    >
      <ContradictionsAloud found={follows.contradictions} />
      <PinnedStrip follows={follows} />
      {isReadBack ? (
        <Suspense fallback={null}>
          <ReadBack call={call} client={open.client} />
        </Suspense>
      ) : (
        <div className={look.page}>
          <TopicNav call={call} at={topic} clientState={clientStateWords(job.client !== null, name)} />
          <div className={look.middle}>
            <TopicQuestions
              key={topic}
              topic={topic}
              call={call}
              begin={begin}
              begunRef={begunRef}
              onEnd={goOn}
              before={topic === 'hunt' && job.client === null ? client(true) : null}
            >
              {topic === 'client' ? client(false) : null}
            </TopicQuestions>
            <div className={look.end}>
              {next === undefined ? null : (
                <Link to={`/job/${job.id}/call/${next}`} className={buttonLook('plain')} {...steadyPress}>
                  Next: {TOPIC_WORDS[next]}
                </Link>
              )}
              <Link to={`/job/${job.id}/call/read-back`} className={buttonLook('primary')} {...steadyPress}>
                Read back
              </Link>
            </div>
          </div>
          <div className={look.aside}>
            <ContradictionList job={job.id} found={elsewhere(follows.contradictions, topic)} />
            <FollowsPanel follows={follows} />
          </div>
        </div>
      )}
    </Page>
  )
}

/** A call that has just begun: the first question is at hand. */
const isBlank = ({ job }: OpenJob) => job.client === null && Object.keys(job.answers).length === 0

/** What is about this topic stands beside its question. */
const elsewhere = (found: readonly Contradiction[], topic: Topic) =>
  found.filter(({ questions }) => !questions.some((id) => questionOf(id).topic === topic))

const clientStateWords = (isKnown: boolean, name: string | undefined) =>
  isKnown ? (name === undefined || name === '' ? 'no name yet' : name) : 'nobody yet'
