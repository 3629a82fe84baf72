/** Tells one order of the demo shop from its call to where it stands, as the app would have written it. */
import { signOff } from '../domain/bench/sign-off'
import type { AnswerValue } from '../domain/call/answer'
import type { QuestionId } from '../domain/call/questions'
import type { EventBody } from '../domain/job/events'
import type { LogHead } from '../domain/records/event'
import { personalOf } from '../domain/records/personal'
import type { Id } from '../domain/records/scalars'
import type { EventDraft, Said } from '../domain/records/write'
import { newEvent, newFact } from '../domain/records/write'
import { draftSheet } from '../domain/sheet/draft-sheet'
import { freeze, startSet } from '../domain/sheet/freeze'
import type { Shelf } from '../domain/stock/shelf'
import { lotsOfPart } from '../domain/stock/lots-of-part'
import type { DemoHand } from './demo-hand'
import type { MemoryJob, Told } from './memory-job'
import { memoryJob } from './memory-job'
import type { Order } from './orders'
import { simulatedBuild } from './simulated-build'

const BUILD_TAKES = 2 // days from the frozen sheet to the box
const BUILDER = 'Ilse'

/**
 * @param now the moment at which the shop is looked at, ISO 8601
 * @param end where the log ends that the commands will be written to, with nothing written in between
 * @returns the commands in their order
 */
export async function tellOrder(
  hand: DemoHand,
  now: string,
  shelf: Shelf,
  order: Order,
  end: LogHead,
): Promise<readonly Told[]> {
  const daysAgo = (days: number) => new Date(Date.parse(now) - days * 86_400_000).toISOString() // ms of a day
  const called: Said = { by: BUILDER, at: daysAgo(order.daysAgo) }
  const id = () => hand.id(called.at)
  const told = memoryJob(id, end)
  const say: MemoryJob['perform'] = (said, records) => told.perform(said, records)

  const about = { job: id() }
  const client = id()
  const personal = personalOf(hand.salt(), { name: order.client, phone: order.phone })
  const clientFact = newFact(called, 'client', client, { personal: personal.hash, consent: true })
  const answered = (Object.entries(order.answers) as [QuestionId, AnswerValue][]).map(([question, value]) =>
    newEvent('answered', about, { question, answer: { value, how: 'told' } }),
  )
  const owed = (order.unknown ?? []).map((question) =>
    newEvent('answered', about, { question, answer: { unknown: true, owedBy: 'client', due: null } }),
  )
  say(called, {
    facts: [clientFact],
    personal: [personal],
    events: [
      newEvent('opened', about, { kind: 'order', of: null }),
      newEvent('clientSet', about, { client }),
      ...answered,
      ...owed,
    ],
  })
  if (order.plan === undefined) return told.commands()

  const planned = say(called, { events: planEvents(about.job, id, shelf, order.plan) })
  const sheet = draftSheet(planned, shelf, clientFact.hash)
  const frozen = freeze(planned, sheet, called)
  const ready = say(called, frozen)
  if (order.to === 'frozen') return told.commands()

  const bench: Said = { by: BUILDER, at: daysAgo(Math.max(0.1, order.daysAgo - BUILD_TAKES)) }
  const begun = say(bench, startSet(ready, sheet, { id, salt: hand.salt }))
  const { job: built } = await simulatedBuild(
    begun,
    sheet,
    hand.dice,
    {
      perform: (events) => Promise.resolve(say(bench, { events })),
      id,
      takenAt: bench.at,
    },
    order.to === 'trim' ? { until: 'trim' } : {},
  )
  if (order.to === 'trim') return told.commands()

  const sent: Said = { by: BUILDER, at: daysAgo(order.daysAgo - BUILD_TAKES - 1) }
  say(sent, signOff(built, sheet, sent))
  say(sent, { events: [newEvent('sent', about, { on: sent.at.slice(0, 10), count: order.plan.quantity })] })
  return told.commands()
}

function planEvents(job: Id, id: () => Id, shelf: Shelf, plan: NonNullable<Order['plan']>): readonly EventDraft[] {
  const about = { job }
  const { parts, ...numbers } = plan
  const fields = Object.entries(numbers).map(([field, value]) =>
    newEvent('planSet', about, { field, value } as EventBody<'planSet'>),
  )
  const lines = parts.map((name) => {
    const part = [...shelf.parts.values()].find((each) => each.body.name === name)
    if (part === undefined) throw new Error(`the demo shelf has no ${name}`)
    const lot = lotsOfPart(shelf, part.id)[0]?.id ?? null
    const count = part.body.kind === 'vane' ? 3 : 1
    return newEvent('lineSet', about, { line: { id: id(), part: part.id, lot, count } })
  })
  return [...fields, ...lines]
}
