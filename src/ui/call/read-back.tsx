/** The end of the call: every answer in a sentence, what is missing, the price, the day; then agreed, and the sheet. */
import { lazy, Suspense } from 'react'
import { Link } from 'wouter'
import { measuringItems, openQuestions } from '../../domain/call/open-questions'
import type { QuestionId } from '../../domain/call/questions'
import { TOPICS, questionOf } from '../../domain/call/questions'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { buttonLook } from '../controls/button'
import { notTakenWords } from '../words/call/question-words'
import { openWords } from '../words/call/open-words'
import { TOPIC_WORDS } from '../words/call/question-words'
import look from './call.module.css'
import { ContradictionList } from './contradiction-list'
import { Promised } from './promised'
import { ReadBackTopic } from './read-back-topic'
import type { Call } from './use-call'

const ClientSummary = lazy(async () => ({ default: (await import('./client-summary')).ClientSummary }))

interface ReadBackProps {
  call: Call
  client: Readonly<Record<string, string>> | null
}

export function ReadBack({ call, client }: ReadBackProps) {
  const { job, follows } = call
  const toMeasure = measuringItems(job.answers).length
  return (
    <div className={look.readBack}>
      <Panel title="Read back" aside={<Link to={`/job/${job.id}/call/hunt`}>Back to the questions</Link>}>
        {Object.entries(call.refused).map(([id, text]) => (
          <Notice key={id} level="look">
            <span data-label="">{notTakenWords(id as QuestionId, text)}</span>{' '}
            <Link to={`/job/${job.id}/call/${questionOf(id as QuestionId).topic}`}>Put it right</Link>
          </Notice>
        ))}
        {TOPICS.filter((topic) => topic !== 'client').map((topic) => (
          <ReadBackTopic key={topic} topic={topic} call={call} />
        ))}
        <section aria-label={TOPIC_WORDS.client}>
          <h3 className={look.small}>{TOPIC_WORDS.client}</h3>
          <div className={look.sentenceRow}>
            <p className={look.sentence} data-label="">
              {clientSentence(client)}
            </p>
            <Link
              to={`/job/${job.id}/call/client`}
              className={buttonLook('text')}
              aria-label={`Change: ${TOPIC_WORDS.client}`}
            >
              Change
            </Link>
          </div>
          {openQuestions(job.answers)
            .filter(({ question }) => question.topic === 'client')
            .map(({ question, ...owed }) => (
              <p key={question.id} className={look.owed} data-label="">
                {openWords(question.id, owed)}
              </p>
            ))}
        </section>
        <ContradictionList job={job.id} found={follows.contradictions} />
      </Panel>
      <div className={look.promise}>
        <Promised call={call} />
        {toMeasure === 0 ? null : (
          <Panel title="Measuring sheet" quiet>
            <p>One page with drawings of how to take exactly what is still open.</p>
            <Link to={`/print/measuring/${job.id}`} className={buttonLook('plain')}>
              Measuring sheet
            </Link>
          </Panel>
        )}
        <Suspense fallback={null}>
          <ClientSummary call={call} client={client} />
        </Suspense>
      </div>
    </div>
  )
}

function clientSentence(client: ReadBackProps['client']): string {
  const name = client?.['name'] ?? ''
  if (name === '') return 'Nobody is named as the client yet.'
  const [phone, email] = [client?.['phone'], client?.['email']]
  const by = [phone, email].filter((each) => each !== undefined && each !== '').join(' or ')
  return `It is for ${name}${by === '' ? '' : `; we reach you by ${by}`}.`
}
