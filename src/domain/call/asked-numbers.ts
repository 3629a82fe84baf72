/** What the fields of a question take: the check, the hint and the test use the same object. */
import type { Asked } from '../entry/parse-quantity'
import type { Question, QuestionId } from './questions'

export type AskedNumber = Asked & { readonly decimals: number }
type Asking = Question & { readonly id: QuestionId }

/** What a number or a count takes, or nothing for another kind of question. */
export function askedNumber({ id, shape }: Asking): AskedNumber | undefined {
  if (shape.kind === 'count') return { unit: '1', min: shape.min, max: shape.max, whole: true, decimals: 0 }
  if (shape.kind !== 'number') return undefined
  const { unit, min, max, decimals } = shape
  return { unit, min, max, decimals, ...(id === 'presentSpineIn' ? { thousandths: true } : {}) }
}

interface PairAsked {
  readonly first: AskedNumber
  readonly second: AskedNumber
}
/** Arrow weight and speed of a chronograph reading. */
export const SPEEDS: PairAsked = {
  first: { unit: 'gr', min: 100, max: 2000, decimals: 1 },
  second: { unit: 'ft/s', min: 50, max: 500, decimals: 1 },
}
/** Draw, string to pivot, and force of a point of the curve. */
export const FORCE_CURVE: PairAsked = {
  first: { unit: 'in', min: 1, max: 40, decimals: 2 },
  second: { unit: 'lbf', min: 0, max: 200, decimals: 1 },
}
