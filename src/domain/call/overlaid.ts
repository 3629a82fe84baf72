/** The saved answers with what is being typed laid over them, so that figures follow every keystroke before it is saved. */
import type { AnswerValue } from './answer'
import type { Answers, KeptAnswer } from './answers'
import type { QuestionId } from './questions'

/** What the fields hold that is not saved yet: a value that can be read, or null for a field that was emptied. */
export type Drafts = Readonly<Partial<Record<QuestionId, AnswerValue | null>>>

export function overlaid(answers: Answers, drafts: Drafts): Answers {
  const typed = Object.entries(drafts) as [QuestionId, AnswerValue | null][]
  if (typed.length === 0) return answers
  return typed.reduce<Answers>((laid, [id, value]) => {
    const answer: KeptAnswer | undefined = value === null ? undefined : { value, how: 'told', by: '', at: '' }
    return { ...laid, [id]: answer }
  }, answers)
}
