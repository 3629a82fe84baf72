/** What the call knows so far: the last answer to each question, with who took it and when. */
import type { EventBody, JobEvent } from '../job/events'
import type { Answer, AnswerValue } from './answer'
import type { Bow } from './bow'
import { NO_BOW } from './bow'
import { QUESTIONS } from './questions'
import type { QuestionId } from './questions'

export type KeptAnswer = Answer & { readonly by: string; readonly at: string }
export type Answers = Readonly<Partial<Record<QuestionId, KeptAnswer>>>

/** The answers after one more event; a cleared answer is as if never given. */
export function answersAfter(answers: Answers, event: Extract<JobEvent, { what: 'answered' }>): Answers {
  const { question, answer }: EventBody<'answered'> = event.body
  if ('cleared' in answer) return { ...answers, [question]: undefined }
  return { ...answers, [question]: { ...answer, by: event.by, at: event.at } }
}

/** The value of an answer that was given, or undefined when it is open or was never asked. */
export function valueOf(answers: Answers, question: QuestionId): AnswerValue | undefined {
  const answer = answers[question]
  return answer !== undefined && 'value' in answer ? answer.value : undefined
}

/** Answers whose place in the bow's record has another name or another shape. */
const NOT_BY_NAME: ReadonlySet<QuestionId> = new Set(['bowKind', 'bowName', 'chronograph', 'forceDraw'])

/** The bow that the answers describe. What is not known is left out. */
export function bowOf(answers: Answers): Bow {
  const told: Record<string, unknown> = {}
  for (const { id, topic } of QUESTIONS) {
    const value = topic === 'bow' ? valueOf(answers, id) : undefined
    if (value !== undefined && !NOT_BY_NAME.has(id)) told[id] = value
  }
  const pairs = (question: 'chronograph' | 'forceDraw') =>
    (valueOf(answers, question) ?? []) as readonly [number, number][]
  const name = valueOf(answers, 'bowName') as string | undefined
  return {
    ...NO_BOW,
    ...told,
    ...(name === undefined ? {} : { name }),
    kind: (valueOf(answers, 'bowKind') as Bow['kind'] | undefined) ?? NO_BOW.kind,
    chronograph: pairs('chronograph').map(([arrowGr, speedFps]) => ({ arrowGr, speedFps })),
    forceDraw: pairs('forceDraw').map(([drawIn, forceLb]) => ({ drawIn, forceLb })),
  }
}
