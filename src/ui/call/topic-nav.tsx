/** The topics of a call, each with how it stands; any order, none blocks another. */
import { Link } from 'wouter'
import { topicStates } from '../../domain/call/open-questions'
import type { Topic } from '../../domain/call/questions'
import { TOPIC_WORDS, topicStateWords } from '../words/call/question-words'
import look from './call.module.css'
import type { Call } from './use-call'

interface TopicNavProps {
  call: Call
  at: Topic
  /** The client is no question: whether one is named. */
  clientState: string
}

export const TopicNav = ({ call, at, clientState }: TopicNavProps) => (
  <nav aria-label="Topics of the call" className={look.topics}>
    <ul className={look.topicList}>
      {topicStates(call.answers).map((state) => (
        <li key={state.topic}>
          <Link
            to={`/job/${call.job.id}/call/${state.topic}`}
            className={look.topic}
            aria-current={state.topic === at ? 'page' : undefined}
          >
            <span>{TOPIC_WORDS[state.topic]}</span>
            <span className={look.topicState} data-label="">
              {state.topic === 'client' ? clientState : topicStateWords(state)}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  </nav>
)
