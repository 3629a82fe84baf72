/** One question by the shape of its answer, with the way out of not knowing and what the client said last time. */
import type { ReactNode } from 'react'
import { memo } from 'react'
import { FORCE_CURVE, SPEEDS, askedNumber } from '../../domain/call/asked-numbers'
import type { AskedQuestion } from '../../domain/call/asked'
import type { Answers } from '../../domain/call/answers'
import { valueOf } from '../../domain/call/answers'
import { ChoiceField } from '../controls/choice-field'
import { DayField } from '../controls/day-field'
import { PairField } from '../controls/pair-field'
import { QuantityField } from '../controls/quantity-field'
import { TextField } from '../controls/text-field'
import { QUESTION_WORDS, optionWords } from '../words/call/question-words'
import { SameAsLastTime } from './same-as-last-time'
import { TakeBack } from './take-back'
import { unknownOf } from './unknown-of'
import type { Call } from './use-call'

interface QuestionFieldProps {
  question: AskedQuestion
  call: Call
}

/** Drawn again only when something of its own has changed: a keystroke in one field leaves the others alone. */
export const QuestionField = memo(OneQuestion, isUnchanged)

function OneQuestion({ question, call }: QuestionFieldProps) {
  const { id, shape } = question
  const { label } = QUESTION_WORDS[id]
  const answer = call.job.answers[id]
  const kept = answer !== undefined && 'value' in answer ? answer.value : undefined
  const shared = { label, name: id, hint: <Hint question={question} call={call} />, unknown: unknownOf(call, id) }
  switch (shape.kind) {
    case 'number':
    case 'count':
      return (
        <QuantityField
          {...shared}
          asked={askedNumber(question)!}
          value={typeof kept === 'number' ? kept : undefined}
          refused={call.refused[id]}
          onRefused={(text) => call.refuse(id, text)}
          onText={(entry) =>
            call.typing(id, entry.kind === 'number' ? entry.value : entry.problem.code === 'empty' ? null : undefined)
          }
          onCommit={(entry) => call.keep(id, entry.value)}
          onClear={() => call.clear(id)}
        />
      )
    case 'day':
      return (
        <DayField
          {...shared}
          today={call.today}
          value={typeof kept === 'string' ? kept : undefined}
          refused={call.refused[id]}
          onRefused={(text) => call.refuse(id, text)}
          onText={(entry) =>
            call.typing(id, entry.kind === 'day' ? entry.day : entry.problem.code === 'empty' ? null : undefined)
          }
          onCommit={(day) => call.keep(id, day)}
          onClear={() => call.clear(id)}
        />
      )
    case 'choice':
    case 'yes or no': {
      const options: readonly string[] = shape.kind === 'choice' ? shape.options : ['yes', 'no']
      return (
        <ChoiceField
          {...shared}
          choices={options.map((value) => ({ value, label: value }))}
          value={chosenIn(call.answers, id)}
          onChoose={(value) => call.keep(id, shape.kind === 'choice' ? value : value === 'yes')}
        />
      )
    }
    case 'line':
      return (
        <TextField
          {...shared}
          value={typeof kept === 'string' ? kept : ''}
          onText={(text) => call.typing(id, text === '' ? null : text)}
          onCommit={(text) => (text === '' ? call.clear(id) : call.keep(id, text))}
        />
      )
    case 'note':
      return (
        <TextField
          {...shared}
          long
          value={noteOf(call, kept)}
          onText={(text) => call.typingNote(id, text)}
          onCommit={(text) => call.keepNote(id, text)}
        />
      )
    case 'apart':
      return null
    case 'speeds':
    case 'force curve': {
      const { first, second } = shape.kind === 'speeds' ? SPEEDS : FORCE_CURVE
      const [one, other] = shape.kind === 'speeds' ? ['Arrow', 'Speed'] : ['Draw', 'Force']
      return (
        <PairField
          {...shared}
          columns={[
            { label: one!, asked: first },
            { label: other!, asked: second },
          ]}
          value={Array.isArray(kept) ? kept : []}
          onCommit={(pairs) =>
            pairs.length === 0
              ? call.clear(id)
              : call.keep(
                  id,
                  pairs.map(([a, b]): [number, number] => [a, b]),
                )
          }
        />
      )
    }
  }
}

function isUnchanged({ question: { id }, call: was }: QuestionFieldProps, { question, call: is }: QuestionFieldProps) {
  return (
    question.id === id &&
    was.job.id === is.job.id &&
    was.job.answers[id] === is.job.answers[id] &&
    was.answers[id] === is.answers[id] &&
    was.prior[id] === is.prior[id] &&
    was.refused[id] === is.refused[id] &&
    was.notes === is.notes &&
    was.today === is.today &&
    was.putOff === is.putOff
  )
}

/** What stands beside the field: what it means, what was said last time, the way to take a choice back. */
function Hint({ question: { id, shape }, call }: QuestionFieldProps): ReactNode {
  const { hint } = QUESTION_WORDS[id]
  const isAnswered = hasValue(call.job.answers, id)
  const isChoice = shape.kind === 'choice' || shape.kind === 'yes or no'
  return (
    <>
      {hint} <SameAsLastTime id={id} call={call} />
      {isAnswered && isChoice ? <TakeBack id={id} call={call} /> : null}
    </>
  )
}

const hasValue = (answers: Answers, id: AskedQuestion['id']) => {
  const answer = answers[id]
  return answer !== undefined && 'value' in answer
}

/** What is chosen, saved or on its way. */
function chosenIn(answers: Answers, id: AskedQuestion['id']): string | undefined {
  const value = valueOf(answers, id)
  return typeof value === 'string' || typeof value === 'boolean' ? optionWords(value) : undefined
}

/** A note's own text; one that was forgotten is gone from every screen. */
function noteOf(call: Call, kept: unknown): string {
  const hash = typeof kept === 'object' && kept !== null && 'note' in kept ? String(kept.note) : undefined
  return hash === undefined ? '' : (call.notes.get(hash) ?? '')
}
