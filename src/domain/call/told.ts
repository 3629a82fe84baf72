/** Answers by the shape their question asks for. A record whose answer is of another shape counts as not told. */
import type { Answers } from './answers'
import { valueOf } from './answers'
import type { QuestionId } from './questions'

export function toldNumber(answers: Answers, question: QuestionId): number | undefined {
  const value = valueOf(answers, question)
  return typeof value === 'number' ? value : undefined
}

export function toldText(answers: Answers, question: QuestionId): string | undefined {
  const value = valueOf(answers, question)
  return typeof value === 'string' ? value : undefined
}

export const toldYes = (answers: Answers, question: QuestionId): boolean => valueOf(answers, question) === true

export function toldPairs(
  answers: Answers,
  question: 'chronograph' | 'forceDraw',
): readonly (readonly [number, number])[] {
  const value = valueOf(answers, question)
  return Array.isArray(value) ? value : []
}
