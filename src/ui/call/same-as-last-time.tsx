/** What a known client said last time, offered where nothing is answered yet; never chosen for anybody. */
import type { QuestionId } from '../../domain/call/questions'
import { Button } from '../controls/button'
import { answerWords } from '../words/call/answer-words'
import type { Call } from './use-call'

export function SameAsLastTime({ id, call }: { id: QuestionId; call: Call }) {
  const prior = call.prior[id]
  if (prior === undefined || call.job.answers[id] !== undefined) return null
  return (
    <Button kind="text" onClick={() => call.keep(id, prior.value, 'same as last time')}>
      same as last time: {answerWords(id, prior.value)}
    </Button>
  )
}
