/** Answers that cannot both be so, each with what to ask and the questions it is about. */
import { Link } from 'wouter'
import type { Contradiction } from '../../domain/call/contradiction'
import { questionOf } from '../../domain/call/questions'
import { Notice } from '../controls/notice'
import { contradictionWords } from '../words/call/contradiction-words'
import { QUESTION_WORDS } from '../words/call/question-words'
import look from './call.module.css'

interface ContradictionListProps {
  job: string
  found: readonly Contradiction[]
}

export const ContradictionList = ({ job, found }: ContradictionListProps) =>
  found.length === 0 ? null : (
    <ul className={look.contradictions}>
      {found.map((each) => {
        const { said, ask } = contradictionWords(each)
        return (
          <li key={each.code} data-contradiction={each.code}>
            <Notice level={each.code === 'wish under the floor' ? 'stop' : 'look'} lead={said}>
              {ask}{' '}
              {each.questions.map((id) => (
                <Link key={id} to={`/job/${job}/call/${questionOf(id).topic}`} className={look.toQuestion}>
                  {QUESTION_WORDS[id].label}
                </Link>
              ))}
            </Notice>
          </li>
        )
      })}
    </ul>
  )

/** The same said aloud as they come up, wherever they are shown. */
export const ContradictionsAloud = ({ found }: { found: readonly Contradiction[] }) => (
  <output className="unseen" data-label="">
    {found.map((each) => Object.values(contradictionWords(each)).join(' ')).join(' ')}
  </output>
)
