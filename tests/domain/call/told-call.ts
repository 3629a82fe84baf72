/** Answers as a call leaves them, for tests: each with who took it and when. */
import type { Answer } from '@/domain/call/answer'
import type { Answers } from '@/domain/call/answers'
import type { QuestionId } from '@/domain/call/questions'

export const CALLED_AT = '2026-11-23T10:00:00.000Z'
export const TODAY = '2026-11-23'

type Told = Partial<Record<QuestionId, number | string | boolean | [number, number][]>>

export const told = (values: Told, open: readonly QuestionId[] = []): Answers =>
  Object.fromEntries([
    ...Object.entries(values).map(([id, value]): [string, Answer & { by: string; at: string }] => [
      id,
      { value, how: 'told', by: 'Ansa', at: CALLED_AT },
    ]),
    ...open.map((id): [string, Answer & { by: string; at: string }] => [
      id,
      { unknown: true, owedBy: 'client', due: '2026-11-30', by: 'Ansa', at: CALLED_AT },
    ]),
  ])
