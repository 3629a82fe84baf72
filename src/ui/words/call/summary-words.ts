/** The client summary as plain text, to paste into a message: what was agreed, what is still to come, price and day. */
import type { Answers } from '../../../domain/call/answers'
import { openQuestions } from '../../../domain/call/open-questions'
import type { Price } from '../../../domain/call/price-lines'
import { questionsAsked } from '../../../domain/call/asked'
import { TOPICS } from '../../../domain/call/questions'
import type { ShipDates } from '../../../domain/call/ship-dates'
import { showLongDay } from '../dates'
import { counted } from '../format'
import { priceLineWords, showMoney } from './price-words'
import { QUESTION_WORDS, TOPIC_WORDS } from './question-words'
import { owedWords } from './open-words'
import { readBackSentence } from './read-back-words'

export interface Summary {
  readonly shop: string
  readonly jobCode: string
  readonly client: string
  readonly answers: Answers
  readonly price: Price
  readonly ship: ShipDates | undefined
  /** Arrows on the sheet once the call was agreed; undefined before. */
  readonly planned: number | undefined
}

export interface SummarySection {
  readonly title: string
  readonly lines: readonly string[]
}

/** Topics with an answer, then what is still to come, price and day. */
export function summarySections({ answers, price, ship, planned }: Summary): readonly SummarySection[] {
  const told = TOPICS.map((topic) => ({
    title: TOPIC_WORDS[topic],
    lines: questionsAsked(answers, topic).flatMap(({ id }) => {
      const answer = answers[id]
      return answer !== undefined && 'value' in answer ? [readBackSentence(id, answer.value)] : []
    }),
  }))
  const open = openQuestions(answers).map(
    ({ question, ...owed }) => `${QUESTION_WORDS[question.id].label}: ${owedWords(question.id, owed)}.`,
  )
  const money = (cents: number) => showMoney(cents, price.currency)
  const prices = [
    ...price.lines.map(
      (line) => `${priceLineWords(line)}: ${line.count} × ${money(line.eachCents)} = ${money(line.cents)}`,
    ),
    ...(price.taxCents === 0 ? [] : [`Tax: ${money(price.taxCents)}`]),
    ...plannedOtherwise(price, planned),
    `Total: ${money(price.totalCents)}, of it ${money(price.depositCents)} as a deposit.`,
  ]
  const dates =
    ship === undefined ? [] : [`Leaves by ${showLongDay(ship.readyOn)}, with you by ${showLongDay(ship.arrivesOn)}.`]
  return [
    ...told,
    { title: 'Still to come', lines: open },
    { title: 'Price', lines: prices },
    { title: 'Day', lines: dates },
  ].filter(({ lines }) => lines.length > 0)
}

/** The sheet went on after the call; the price did not. */
function plannedOtherwise(price: Price, planned: number | undefined): readonly string[] {
  const priced = price.lines.find(({ what }) => what === 'arrows')?.count
  if (planned === undefined || priced === undefined || planned === priced) return []
  return [`The sheet has ${counted(planned, 'arrow')} now; this price is for ${priced}.`]
}

export function summaryText(summary: Summary): string {
  const head = [summary.shop, `Job ${summary.jobCode}`, ...(summary.client === '' ? [] : [`For ${summary.client}`])]
  const sections = summarySections(summary).map(({ title, lines }) => [title, ...lines].join('\n'))
  return [head.join('\n'), ...sections, BEFORE_YOU_SHOOT].join('\n\n')
}

export const BEFORE_YOU_SHOOT =
  'Before each shot look over shaft, nock and head. Speeds and weights here are plans until the arrows are built.'
