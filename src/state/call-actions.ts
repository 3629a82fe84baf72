/** What a builder does on the call, each one command. Rules are the domain's; what is written goes through the store. */
import { acceptCall } from '../domain/call/accept-call'
import type { Answer } from '../domain/call/answer'
import type { ClientNow } from '../domain/call/client-record'
import { clientWriting, NO_CLIENT } from '../domain/call/client-record'
import type { ClientFields } from '../domain/call/client'
import { implications } from '../domain/call/implications'
import { priceOf } from '../domain/call/price-lines'
import type { QuestionId } from '../domain/call/questions'
import { jobOf } from '../domain/job/job'
import { readable } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { AppStore } from './app-store'

export const answerQuestion = (store: AppStore, job: Id, question: QuestionId, answer: Answer): Promise<boolean> =>
  store.getState().write(() => ({ events: [newEvent('answered', { job }, { question, answer })] }))

/** Free text lies apart with the personal data; the answer names it by its hash. An emptied note clears the answer. */
export function answerNote(store: AppStore, job: Id, question: QuestionId, text: string): Promise<boolean> {
  if (text.trim() === '') return answerQuestion(store, job, question, { cleared: true })
  const note = store.getState().note(text)
  const answer: Answer = { value: { note: note.hash }, how: 'told' }
  return store
    .getState()
    .write(() => ({ events: [newEvent('answered', { job }, { question, answer })], personal: [note] }))
}

/** The client's record as it stands: its versions, what is not forgotten of it, and the consent. */
export async function clientNow(store: AppStore, subject: Id | null): Promise<ClientNow> {
  const { repository } = store.getState()
  if (repository === null || subject === null) return NO_CLIENT
  const heads = readable(await repository.headsOf('client', subject))
  const rows = await Promise.all(heads.map((fact) => repository.personal(fact.body.personal)))
  const fields = Object.assign({}, ...rows.map((row) => row?.fields ?? {})) as Partial<ClientFields>
  return {
    subject,
    parents: heads.map((fact) => fact.hash),
    fields,
    consent: consentOf(heads.map((fact) => fact.body.consent)),
  }
}

/** Of versions changed apart: a refusal stands over everything, and what was asked over what was not. */
const consentOf = (said: readonly (boolean | null)[]): boolean | null =>
  said.includes(false) ? false : said.includes(true) ? true : null

export async function changeClient(
  store: AppStore,
  job: Id,
  change: { readonly fields?: Partial<ClientFields>; readonly consent?: boolean },
): Promise<boolean> {
  const saved = await store.getState().writeFrom(
    // From the record, not from what is open: the builder may be on another job by the time this has its turn.
    async (repository) => clientNow(store, jobOf((await repository.eventsOfJob(job)).events)?.client ?? null),
    (now, said, ids) => clientWriting(job, now, change, said, ids),
  )
  if (saved) await store.getState().reloadJob(job)
  return saved
}

/** The job is for this client; null: for nobody yet. */
export const setClient = (store: AppStore, job: Id, client: Id | null): Promise<boolean> =>
  store.getState().write(() => ({ events: [newEvent('clientSet', { job }, { client })] }))

/** The read-back was agreed. @param today an ISO day */
export async function acceptOpenCall(store: AppStore, today: string): Promise<boolean> {
  const { open, shelf, repository } = store.getState()
  if (open === null || repository === null) return false
  const { job } = open
  const bowHeads = job.bow === null ? [] : readable(await repository.headsOf('bow', job.bow)).map((fact) => fact.hash)
  const follows = implications(job.answers, shelf.rules, shelf, today)
  const price = priceOf(job.answers, shelf.rules)
  return store.getState().write((said, ids) => acceptCall({ job, follows, price, shelf, bowHeads }, said, ids))
}
