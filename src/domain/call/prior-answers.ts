/**
 * What a known client said in earlier jobs, newest first: offered beside a question that has no answer yet, never chosen
 * for anybody. Days, notes and what goes with one order only are not offered.
 */
import type { Job } from '../job/job'
import type { AnswerValue } from './answer'
import { valueOf } from './answers'
import type { QuestionId } from './questions'
import { QUESTIONS } from './questions'

export interface PriorAnswer {
  readonly value: AnswerValue
  readonly jobCode: string
  /** When it was said; ISO 8601. */
  readonly at: string
}
export type PriorAnswers = Readonly<Partial<Record<QuestionId, PriorAnswer>>>

const ONE_ORDER_ONLY: ReadonlySet<QuestionId> = new Set(['travelOn', 'rush', 'testKit'])

/** @param jobs the client's other jobs, in any order */
export function priorAnswers(jobs: readonly Job[]): PriorAnswers {
  const newestFirst = jobs.toSorted((a, b) => (a.openedAt < b.openedAt ? 1 : -1))
  const offered = QUESTIONS.filter(({ id, shape }) => shape.kind !== 'note' && !ONE_ORDER_ONLY.has(id))
  return Object.fromEntries(
    offered.flatMap(({ id }) => {
      const job = newestFirst.find(({ answers }) => valueOf(answers, id) !== undefined)
      if (job === undefined) return []
      return [
        [id, { value: valueOf(job.answers, id)!, jobCode: job.code, at: job.answers[id]!.at } satisfies PriorAnswer],
      ]
    }),
  )
}

/** The bow of the client's newest job that has one. */
export const priorBow = (jobs: readonly Job[]) =>
  jobs.toSorted((a, b) => (a.openedAt < b.openedAt ? 1 : -1)).find(({ bow }) => bow !== null)?.bow ?? null
