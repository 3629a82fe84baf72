/** The way out of not knowing: one tap makes an open question, and says who owes it and by when. */
import type { QuestionId } from '../../domain/call/questions'
import type { Unknown } from '../controls/field-row'
import { owedWords } from '../words/call/open-words'
import { TakeBack } from './take-back'
import type { Call } from './use-call'

export function unknownOf(call: Call, id: QuestionId): Unknown {
  const answer = call.job.answers[id]
  if (answer === undefined || !('unknown' in answer)) return { said: false, onSay: () => call.putOff(id) }
  const owed = (
    <>
      {owedWords(id, answer)} <TakeBack id={id} call={call} />
    </>
  )
  return { said: true, owed, onSay: () => call.putOff(id) }
}
