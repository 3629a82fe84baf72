/** One answer as the record keeps it: what was said and how it is known, or that it is open and who owes it. */
import * as z from 'zod/mini'
import { day, hash, line } from '../records/scalars'

const pair = z.tuple([z.number(), z.number()])
export const answerValue = z.union([
  z.number(),
  z.boolean(),
  line,
  z.array(pair).check(z.maxLength(60)),
  z.strictObject({ note: hash }),
])
export type AnswerValue = z.infer<typeof answerValue>

export const answer = z.union([
  z.strictObject({ value: answerValue, how: z.enum(['told', 'measured', 'same as last time']) }),
  z.strictObject({ unknown: z.literal(true), owedBy: z.enum(['client', 'shop', 'guide']), due: z.nullable(day) }),
  /** Cleared: as if never asked. */
  z.strictObject({ cleared: z.literal(true) }),
])
export type Answer = z.infer<typeof answer>
