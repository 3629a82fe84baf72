/**
 * The open call as its page needs it: what is saved with what is being typed laid over it, what follows from both, what a
 * known client said before, and the actions that keep an answer.
 */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { Answer, AnswerValue } from '../../domain/call/answer'
import type { Answers } from '../../domain/call/answers'
import type { Implications } from '../../domain/call/implications'
import { implications } from '../../domain/call/implications'
import { usualDue, usualOwner } from '../../domain/call/open-questions'
import type { Drafts } from '../../domain/call/overlaid'
import { overlaid } from '../../domain/call/overlaid'
import type { PriorAnswers } from '../../domain/call/prior-answers'
import { priorAnswers } from '../../domain/call/prior-answers'
import type { QuestionId } from '../../domain/call/questions'
import { valueIn } from '../../domain/call/follows'
import type { Job } from '../../domain/job/job'
import { answerNote, answerQuestion } from '../../state/call-actions'
import { otherJobs } from '../../state/find-clients'
import type { OpenJob } from '../../state/open-job'
import { useApp, useAppStore } from '../app/use-app'
import { dayOfMoment } from '../words/dates'

export type Refused = Readonly<Partial<Record<QuestionId, string>>>

export interface Call {
  readonly job: Job
  readonly notes: OpenJob['notes']
  /** With what is being typed laid over them. */
  readonly answers: Answers
  readonly follows: Implications
  readonly today: string
  readonly prior: PriorAnswers
  readonly others: readonly Job[]
  /** On each keystroke. Undefined: what stands in the field cannot be read, so the saved answer counts. */
  typing(question: QuestionId, value: AnswerValue | null | undefined): void
  keep(question: QuestionId, value: AnswerValue, how?: 'told' | 'same as last time'): void
  typingNote(question: QuestionId, text: string): void
  keepNote(question: QuestionId, text: string): void
  clear(question: QuestionId): void
  /** What stands in fields and could not be read; it is kept by nobody and outlives its topic. */
  readonly refused: Refused
  refuse(question: QuestionId, text: string | undefined): void
  putOff(
    question: QuestionId,
    owed?: { readonly owedBy: 'client' | 'shop' | 'guide'; readonly due: string | null },
  ): void
}

// ms; then what stands in a field is kept, so that a call cut off loses next to nothing
const IDLE = 1500
const IDLE_NOTE = 4000

interface Waiting {
  readonly timer: ReturnType<typeof setTimeout>
  readonly keepIt: () => void
}

export function useCall(open: OpenJob): Call {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const today = dayOfMoment(useApp((s) => s.now)())
  const { job } = open
  const [drafts, setDrafts] = useState<Drafts>({})
  const [refused, setRefused] = useState<Refused>({})
  const others = useOtherJobs(job)
  const idle = useRef(new Map<QuestionId, Waiting>())

  const answers = useMemo(() => overlaid(job.answers, drafts), [job.answers, drafts])
  const follows = useMemo(() => implications(answers, shelf.rules, shelf, today), [answers, shelf, today])
  const prior = useMemo(() => priorAnswers(others), [others])
  const beginBy = valueIn(follows.ship)?.beginBy ?? null

  const settle = useCallback((question: QuestionId) => {
    clearTimeout(idle.current.get(question)?.timer)
    idle.current.delete(question)
  }, [])
  const keepAfter = useCallback(
    (time: number, question: QuestionId, keepIt: () => void) => {
      settle(question)
      idle.current.set(question, { timer: setTimeout(keepIt, time), keepIt })
    },
    [settle],
  )
  useEffect(() => {
    // A phone that is put away may never come back to this page.
    const atOnce = () => document.hidden && [...idle.current.values()].forEach(({ keepIt }) => keepIt())
    document.addEventListener('visibilitychange', atOnce)
    return () => document.removeEventListener('visibilitychange', atOnce)
  }, [])
  const refuse = useCallback<Call['refuse']>(
    (question, text) =>
      setRefused((now) =>
        now[question] === text
          ? now
          : { ...without(now, question), ...(text === undefined ? {} : { [question]: text }) },
      ),
    [],
  )
  const write = useCallback(
    (question: QuestionId, answer: Answer) => {
      settle(question)
      refuse(question, undefined)
      // What was chosen shows at once; whether it is kept, the save state says.
      const laid = 'value' in answer ? answer.value : null
      setDrafts((now) => ({ ...now, [question]: laid }))
      void answerQuestion(store, job.id, question, answer).then((saved) => {
        if (saved) setDrafts((now) => (now[question] === laid ? without(now, question) : now))
      })
    },
    [store, job.id, settle, refuse],
  )
  const keep = useCallback<Call['keep']>((question, value, how = 'told') => write(question, { value, how }), [write])
  const typing = useCallback<Call['typing']>(
    (question, value) => {
      setDrafts((now) => (value === undefined ? without(now, question) : { ...now, [question]: value }))
      settle(question)
      if (value !== undefined && value !== null) keepAfter(IDLE, question, () => keep(question, value))
    },
    [keep, settle, keepAfter],
  )
  const putOff = useCallback<Call['putOff']>(
    (question, owed = { owedBy: usualOwner(question), due: usualDue(today, beginBy) }) =>
      write(question, { unknown: true, ...owed }),
    [write, today, beginBy],
  )
  const keepNote = useCallback<Call['keepNote']>(
    (question, text) => {
      settle(question)
      void answerNote(store, job.id, question, text)
    },
    [store, job.id, settle],
  )
  return {
    job,
    notes: open.notes,
    answers,
    follows,
    today,
    prior,
    others,
    typing,
    keep,
    typingNote: (question, text) => keepAfter(IDLE_NOTE, question, () => keepNote(question, text)),
    keepNote,
    clear: (question) => write(question, { cleared: true }),
    putOff,
    refused,
    refuse,
  }
}

const without = <T extends object>(drafts: T, question: QuestionId): Partial<T> =>
  Object.fromEntries(Object.entries(drafts).filter(([each]) => each !== question)) as Partial<T>

const NONE: readonly Job[] = []

/** What a known client ordered before; read once for each client. */
function useOtherJobs({ id, client }: Job): readonly Job[] {
  const store = useAppStore()
  const [found, setFound] = useState<{ client: string; jobs: readonly Job[] }>()
  useEffect(() => {
    if (client === null) return undefined
    let gone = false
    void otherJobs(store, client, id).then((jobs) => {
      if (!gone) setFound({ client, jobs })
    })
    return () => {
      gone = true
    }
  }, [store, client, id])
  return found !== undefined && found.client === client ? found.jobs : NONE
}
