/**
 * The questions of one topic. Enter keeps an answer and goes on to the next question, so that a call can be taken without
 * leaving the keyboard; in a choice, the first letter of an option picks it.
 */
import type { KeyboardEvent, ReactNode, RefObject } from 'react'
import { useEffect, useRef } from 'react'
import { questionsAsked } from '../../domain/call/asked'
import type { QuestionId, Topic } from '../../domain/call/questions'
import { Panel } from '../controls/panel'
import { TOPIC_WORDS } from '../words/call/question-words'
import look from './call.module.css'
import { ContradictionList } from './contradiction-list'
import { QuestionField } from './question-field'
import type { Call } from './use-call'

interface TopicQuestionsProps {
  topic: Topic
  call: Call
  /** Each time it rises the first field takes the focus, once: the builder came here with Enter, not by a link. */
  begin: number
  begunRef: RefObject<number>
  /** Enter in the last question. */
  onEnd: () => void
  /** Before the questions: who is calling. */
  before?: ReactNode
  children?: ReactNode
}

export function TopicQuestions({ topic, call, begin, begunRef, onEnd, before, children }: TopicQuestionsProps) {
  const list = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (begin === begunRef.current || list.current === null) return
    begunRef.current = begin
    // A save answers late: who types in a field of their own choosing by then keeps it.
    if (isField(document.activeElement)) return
    focusOn(fieldsIn(list.current)[0])
  }, [begin, begunRef])

  // Asked about beside the first question of this topic that it is about.
  const asked = questionsAsked(call.answers, topic).filter(({ shape }) => shape.kind !== 'apart')
  const about = (id: QuestionId) =>
    call.follows.contradictions.filter(({ questions }) => asked.find((each) => questions.includes(each.id))?.id === id)

  return (
    <Panel title={TOPIC_WORDS[topic]}>
      {/* The keys are those of the fields inside; the list itself is no control. */}
      {/* oxlint-disable-next-line jsx-a11y/no-static-element-interactions */}
      <div ref={list} className={look.questions} onKeyDown={(event) => onKey(event, list.current, onEnd)}>
        {before}
        {asked.map((question) => (
          <div key={question.id} data-question={question.id} className={look.question}>
            <QuestionField question={question} call={call} />
            <ContradictionList job={call.job.id} found={about(question.id)} />
          </div>
        ))}
        {children}
        <p className={look.keys}>Enter keeps an answer and goes on; in a note it takes Control and Enter.</p>
      </div>
    </Panel>
  )
}

type Field = HTMLInputElement | HTMLTextAreaElement
const isField = (target: EventTarget | null): target is Field =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement

/** What can be filled in, in order; of a choice the option that is chosen, or its first. */
function fieldsIn(list: HTMLElement): readonly Field[] {
  const all = [...list.querySelectorAll<Field>('input, textarea')]
  return all.filter((field) => !isRadio(field) || field === standsFor(all, field.name))
}
const isRadio = (field: Field): boolean => field.type === 'radio'

function standsFor(all: readonly Field[], name: string): Field | undefined {
  const group = all.filter((each) => isRadio(each) && each.name === name)
  return group.find((each) => each instanceof HTMLInputElement && each.checked) ?? group[0]
}

function focusOn(field: Field | undefined) {
  field?.focus()
  if (field instanceof HTMLInputElement && !isRadio(field)) field.select()
}

function onKey(event: KeyboardEvent, list: HTMLElement | null, onEnd: () => void) {
  const field = event.target
  if (list === null || !isField(field) || event.altKey || event.nativeEvent.isComposing) return
  const isNote = field instanceof HTMLTextAreaElement
  const withControl = event.ctrlKey || event.metaKey
  // In a note Enter is a new line, so it takes the control key to go on.
  if (event.key === 'Enter' && withControl === isNote) {
    event.preventDefault()
    if (isNote) field.blur()
    goOn(list, field, onEnd)
  } else if (withControl) return
  else if (!isNote && isRadio(field) && /^\p{Letter}$/u.test(event.key)) {
    event.preventDefault()
    pick(list, field, event.key)
  }
}

/** To the next field; from an empty row of pairs to the next question. A refused entry keeps the focus. */
function goOn(list: HTMLElement, field: Field, onEnd: () => void) {
  // After the field's own Enter has kept or refused the entry.
  queueMicrotask(() => {
    if (field.isConnected && field.getAttribute('aria-invalid') === 'true') return
    const all = [...list.querySelectorAll<Field>('input, textarea')]
    const at = all.indexOf(field)
    const question = field.closest('[data-question]')
    const isEmptyRow = !isRadio(field) && field.value === ''
    const later = fieldsIn(list).filter(
      (each) => all.indexOf(each) > at && !(isRadio(each) && each.name === field.name),
    )
    const next = later.find((each) => !isEmptyRow || each.closest('[data-question]') !== question)
    if (next === undefined) onEnd()
    else focusOn(next)
  })
}

/** The next option that begins with a letter, as in a native list. */
function pick(list: HTMLElement, field: HTMLInputElement, letter: string) {
  const group = [...list.querySelectorAll<HTMLInputElement>('input[type=radio]')].filter(
    (each) => each.name === field.name,
  )
  const from = group.findIndex((each) => each.checked)
  const ordered = [...group.slice(from + 1), ...group.slice(0, from + 1)]
  const found = ordered.find((each) => each.value.toLowerCase().startsWith(letter.toLowerCase()))
  found?.click()
  found?.focus()
}
