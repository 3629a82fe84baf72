/** Takes an answer, or the word that it is not known, back: the question is as if it was never asked. */
import type { QuestionId } from '../../domain/call/questions'
import { Button } from '../controls/button'
import { QUESTION_WORDS } from '../words/call/question-words'
import type { Call } from './use-call'

export const TakeBack = ({ id, call }: { id: QuestionId; call: Call }) => (
  <Button kind="text" aria-label={`Take back: ${QUESTION_WORDS[id].label}`} onClick={() => call.clear(id)}>
    Take back
  </Button>
)
