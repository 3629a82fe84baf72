/** Which questions a call still asks: what the kind of bow, or another answer, makes pointless is left out. */
import type { Answers } from './answers'
import { valueOf } from './answers'
import type { Question, QuestionId, Topic } from './questions'
import { QUESTIONS } from './questions'

export type AskedQuestion = (typeof QUESTIONS)[number]

const isFieldPointOnly = (answers: Answers) => valueOf(answers, 'headKind') === 'field point'

/** Questions that another answer makes pointless. */
const POINTLESS: Readonly<Partial<Record<QuestionId, (answers: Answers) => boolean>>> = {
  arrowToCableIn: (answers) => valueOf(answers, 'cableSide') === 'none',
  headBlades: isFieldPointOnly,
  cuttingWidthIn: isFieldPointOnly,
  bevelHand: isFieldPointOnly,
  sharpening: isFieldPointOnly,
  fieldPoints: (answers) => valueOf(answers, 'headKind') !== 'broadhead' && valueOf(answers, 'headKind') !== undefined,
}

/** What stands in the client's own record is a question of the call only while it is owed. */
const isOwed = (answers: Answers, id: QuestionId) => {
  const answer = answers[id]
  return answer !== undefined && 'unknown' in answer
}

export function isAsked(question: Question & { readonly id: QuestionId }, answers: Answers): boolean {
  if (question.shape.kind === 'apart') return isOwed(answers, question.id)
  const kind = valueOf(answers, 'bowKind')
  const fitsBow = !(question.notFor ?? []).some((each) => each === kind)
  return fitsBow && POINTLESS[question.id]?.(answers) !== true
}

/** The questions of a topic, or of the whole call, in the order they are asked. */
export const questionsAsked = (answers: Answers, topic?: Topic): readonly AskedQuestion[] =>
  QUESTIONS.filter((each) => (topic === undefined || each.topic === topic) && isAsked(each, answers))
