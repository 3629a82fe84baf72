/** One topic read back: its answers in sentences, each to be changed in place; what is owed; what was not asked. */
import { useState } from 'react'
import type { AskedQuestion } from '../../domain/call/asked'
import { questionsAsked } from '../../domain/call/asked'
import { notAsked } from '../../domain/call/open-questions'
import type { QuestionId, Topic } from '../../domain/call/questions'
import { Button } from '../controls/button'
import { openWords } from '../words/call/open-words'
import { QUESTION_WORDS, TOPIC_WORDS } from '../words/call/question-words'
import { readBackSentence } from '../words/call/read-back-words'
import look from './call.module.css'
import { OwedBy } from './owed-by'
import { QuestionField } from './question-field'
import type { Call } from './use-call'

interface ReadBackTopicProps {
  topic: Topic
  call: Call
}

export function ReadBackTopic({ topic, call }: ReadBackTopicProps) {
  const [changing, setChanging] = useState<QuestionId>()
  const missing = notAsked(call.job.answers, topic)
  const asked = questionsAsked(call.job.answers, topic).filter(({ id }) => call.job.answers[id] !== undefined)
  const toggle = (id: QuestionId) => setChanging((now) => (now === id ? undefined : id))
  const question =
    changing === undefined ? undefined : questionsAsked(call.job.answers, topic).find(({ id }) => id === changing)

  return (
    <section aria-label={TOPIC_WORDS[topic]}>
      <h3 className={look.small}>{TOPIC_WORDS[topic]}</h3>
      <ul>
        {asked.map((each) => (
          <li key={each.id}>
            <ReadBackLine
              question={each}
              call={call}
              isChanging={changing === each.id}
              onChange={() => toggle(each.id)}
            />
          </li>
        ))}
      </ul>
      {missing.length === 0 ? null : (
        <p className={look.missing} data-label="">
          Not asked:{' '}
          {missing.map(({ id }) => (
            <Button key={id} kind="text" aria-expanded={changing === id} onClick={() => toggle(id)}>
              {QUESTION_WORDS[id].label}
            </Button>
          ))}
        </p>
      )}
      {question !== undefined && missing.some(({ id }) => id === question.id) ? (
        <QuestionField question={question} call={call} />
      ) : null}
    </section>
  )
}

interface LineProps {
  question: AskedQuestion
  call: Call
  isChanging: boolean
  onChange: () => void
}

function ReadBackLine({ question, call, isChanging, onChange }: LineProps) {
  const { id } = question
  const answer = call.job.answers[id]
  if (answer === undefined) return null
  const { label } = QUESTION_WORDS[id]
  const act = 'unknown' in answer ? 'Answer' : 'Change'
  return (
    <div data-read-back={id}>
      <div className={look.sentenceRow}>
        <p className={'unknown' in answer ? look.owed : look.sentence} data-label="">
          {'unknown' in answer ? openWords(id, answer) : 'value' in answer ? readBackSentence(id, answer.value) : ''}
        </p>
        <Button kind="text" aria-label={`${act}: ${label}`} aria-expanded={isChanging} onClick={onChange}>
          {act}
        </Button>
      </div>
      {isChanging ? <QuestionField question={question} call={call} /> : null}
      {isChanging && 'unknown' in answer ? <OwedBy id={id} answer={answer} call={call} /> : null}
    </div>
  )
}
