/** What is still owed: by whom, by when, and where it is asked for. */
import type { Measure, Owner } from '../../../domain/call/open-questions'
import type { QuestionId } from '../../../domain/call/questions'
import { questionOf } from '../../../domain/call/questions'
import { showDay } from '../dates'
import { QUESTION_WORDS } from './question-words'

export const OWNER_WORDS: Readonly<Record<Owner, string>> = { client: 'client', shop: 'the shop', guide: 'guide' }

interface Owed {
  readonly owedBy: Owner
  readonly due: string | null
}

/** `on the measuring sheet, by 30 Nov`, `from the guide, by 30 Nov`. */
export function owedWords(id: QuestionId, { owedBy, due }: Owed): string {
  const { measure } = questionOf(id)
  const where =
    owedBy === 'client' && measure !== undefined
      ? 'on the measuring sheet'
      : owedBy === 'shop'
        ? 'ours to find out'
        : `from the ${OWNER_WORDS[owedBy]}`
  return due === null ? where : `${where}, by ${showDay(due)}`
}

/** `Brace height: not known yet, on the measuring sheet, by 30 Nov.` */
export const openWords = (id: QuestionId, owed: Owed): string =>
  `${QUESTION_WORDS[id].label}: not known yet, ${owedWords(id, owed)}.`

export const MEASURE_WORDS: Readonly<Record<Measure, string>> = {
  'draw weight': 'Peak draw weight',
  'draw length': 'Draw length',
  marks: 'Marks at full draw',
  'brace height': 'Brace height',
  'module mark': 'Module mark',
  nock: 'Nock on the serving',
  chronograph: 'Chronograph',
}
