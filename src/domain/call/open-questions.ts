/** What is still owed: the questions put off, each with who owes it and by when, and those that nobody has asked yet. */
import type { Answers } from './answers'
import type { AskedQuestion } from './asked'
import { questionsAsked } from './asked'
import { daysAfter } from './days-after'
import type { Question, QuestionId, Topic } from './questions'
import { TOPICS } from './questions'

export type Owner = 'client' | 'shop' | 'guide'

export interface OpenQuestion {
  readonly question: AskedQuestion
  readonly owedBy: Owner
  readonly due: string | null
}

export function openQuestions(answers: Answers): readonly OpenQuestion[] {
  return questionsAsked(answers).flatMap((question) => {
    const answer = answers[question.id]
    return answer !== undefined && 'unknown' in answer ? [{ question, owedBy: answer.owedBy, due: answer.due }] : []
  })
}

export const notAsked = (answers: Answers, topic?: Topic): readonly AskedQuestion[] =>
  questionsAsked(answers, topic).filter(({ id }) => answers[id] === undefined)

/** Where a topic stands: how many of its questions have an answer, are put off, were not asked. */
export interface TopicState {
  readonly topic: Topic
  readonly answered: number
  readonly open: number
  readonly notAsked: number
}

export const topicStates = (answers: Answers): readonly TopicState[] =>
  TOPICS.map((topic) => {
    const asked = questionsAsked(answers, topic)
    const open = asked.filter(({ id }) => isOpen(answers, id)).length
    const missing = notAsked(answers, topic).length
    return { topic, answered: asked.length - open - missing, open, notAsked: missing }
  })

function isOpen(answers: Answers, id: QuestionId): boolean {
  const answer = answers[id]
  return answer !== undefined && 'unknown' in answer
}

const OF_THE_GUIDE: ReadonlySet<QuestionId> = new Set(['place', 'guideLeastGr', 'guideDemands'])

/** Who usually owes an answer that is put off. */
export const usualOwner = (id: QuestionId): Owner => (OF_THE_GUIDE.has(id) ? 'guide' : 'client')

const DAYS_TO_ANSWER = 7

/** By when it is owed: in a week, or by the day the bench must begin where that is sooner. */
export function usualDue(today: string, beginBy: string | null): string {
  const inAWeek = daysAfter(today, DAYS_TO_ANSWER)
  if (beginBy === null || beginBy > inAWeek) return inAWeek
  return beginBy > today ? beginBy : today
}

export type Measure = NonNullable<Question['measure']>

/** The drawings a measuring sheet needs, for exactly the measurements that are open, in the order they are best taken. */
export function measuringItems(
  answers: Answers,
): readonly { readonly measure: Measure; readonly open: readonly OpenQuestion[] }[] {
  const open = openQuestions(answers)
  const measures = [...new Set(open.flatMap(({ question }) => measureOf(question) ?? []))]
  return measures.map((measure) => ({
    measure,
    open: open.filter(({ question }) => measureOf(question) === measure),
  }))
}

const measureOf = (question: Question): Measure | undefined => question.measure
