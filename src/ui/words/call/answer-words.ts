/** An answer as it is said: `72 lb`, `28.5 in`, `14 Jan 2027`, `452 gr at 268 ft/s, 601 gr at 236.5 ft/s`. */
import type { AnswerValue } from '../../../domain/call/answer'
import type { QuestionId } from '../../../domain/call/questions'
import { questionOf } from '../../../domain/call/questions'
import { showDayAndYear } from '../dates'
import { showPlain } from '../format'
import { unitSuffix } from '../unit-words'
import { optionWords } from './question-words'

export function answerWords(id: QuestionId, value: AnswerValue): string {
  const { shape } = questionOf(id)
  if (typeof value === 'boolean') return optionWords(value)
  if (typeof value === 'number') {
    if (shape.kind !== 'number') return showPlain(value)
    // As its field shows it: what was told in metres is no truer for its millionths of a foot.
    return showPlain(value, shape.decimals + 2) + unitSuffix(shape.unit)
  }
  if (typeof value === 'string') return shape.kind === 'day' ? showDayAndYear(value) : value.trim()
  if ('note' in value) return 'a note'
  const [first, second] = shape.kind === 'speeds' ? ([' gr', ' ft/s'] as const) : ([' in', ' lb'] as const)
  return value.map(([a, b]) => `${showPlain(a)}${first} at ${showPlain(b)}${second}`).join(', ')
}
