/**
 * A whole order of the demo shop, from call to box, in a book on a simulated IndexedDB: what the tests of everything that
 * comes after the sending stand on. Built in memory and written in three commands, so that it takes no time.
 */
import { dice } from '@/demo/dice'
import { DEMO_PARTS } from '@/demo/demo-parts'
import { DEMO_RULES } from '@/demo/demo-rules'
import { simulatedBuild } from '@/demo/simulated-build'
import { signOff } from '@/domain/bench/sign-off'
import type { AnswerValue } from '@/domain/call/answer'
import type { QuestionId } from '@/domain/call/questions'
import type { EventBody, JobEvent } from '@/domain/job/events'
import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import { VIEW_RULES } from '@/domain/job/view-rules'
import { chained } from '@/domain/records/event'
import { personalOf } from '@/domain/records/personal'
import { newEvent, newFact } from '@/domain/records/write'
import type { EventDraft } from '@/domain/records/write'
import { RULES_SUBJECT } from '@/domain/shop/rules-subject'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { freeze, startSet } from '@/domain/sheet/freeze'
import { loadShelf } from '@/state/load-shelf'
import { openRepository } from '@/storage/open-repository'
import { countedIds, engineOf, heldSurroundings } from '@tests/storage/fresh-shop'

const PARTS = [
  'Heron 200',
  'Clip 11',
  'Long post 158',
  'Ring 42',
  'Two-blade 250',
  'Broad vane 2.6',
  'Slow epoxy',
  'Vane glue',
] as const
const ANSWERS: Partial<Record<QuestionId, AnswerValue>> = {
  quarry: 'bison',
  bowKind: 'compound',
  peakDrawWeightLb: 72,
  drawLengthIn: 28,
  chronograph: [
    [452, 268],
    [601, 236.5],
  ],
  looseWith: 'release aid',
}

/** @param at when it was built and sent */
export async function sentOrder(at = '2026-03-02T09:00:00.000Z', quantity = 3, name = 'Maren Tolliver') {
  const said = { by: 'Ilse', at }
  const ids = countedIds(41)
  const repository = await openRepository({
    name: 'grainwright-sent',
    rules: VIEW_RULES,
    ids,
    surroundings: heldSurroundings().surroundings,
    engine: engineOf(),
  })
  const commit = async (records: Pick<Parameters<typeof repository.commit>[0], 'facts' | 'events' | 'personal'>) => {
    const receipt = await repository.commit({ id: ids.id(), ...said, ...records })
    if (receipt.kind !== 'saved') throw new Error(`not saved: ${receipt.detail}`)
    return receipt.events as readonly JobEvent[]
  }
  const stocked = DEMO_PARTS.flatMap((part, i) => {
    const [id, lot] = [ids.id(), ids.id()]
    const received = { part: id, code: `L-${i + 11}`, receivedOn: at.slice(0, 10), received: 36, numbered: [] }
    return [newFact(said, 'part', id, part), newFact(said, 'lot', lot, received)]
  })
  await commit({ facts: [newFact(said, 'rules', RULES_SUBJECT, DEMO_RULES), ...stocked] })
  const shelf = await loadShelf(repository)

  const about = { job: ids.id() }
  const command = ids.id()
  const events: EventDraft[] = []
  let head = (await repository.tally()).head
  let job: Job | null = null
  // Chained as the book will chain it, under the command that brings it, so that every hash is already the one to come.
  const perform = (drafts: readonly EventDraft[]): Promise<Job> => {
    events.push(...drafts)
    for (const event of chained(head, { id: command, ...said, events: drafts })) {
      head = { log: event.log, seq: event.seq, hash: event.hash }
      job = jobAfter(job, event as JobEvent)
    }
    return Promise.resolve(job!)
  }

  const client = ids.id()
  const personal = personalOf(ids.salt(), { name, phone: '0155 0100 011' })
  const clientFact = newFact(said, 'client', client, { personal: personal.hash, consent: true })
  const partCalled = (name: string) => [...shelf.parts.values()].find(({ body }) => body.name === name)!
  const lotOf = (part: string) => [...shelf.lots.values()].find(({ body }) => body.part === part)?.id ?? null
  const planned = await perform([
    newEvent('opened', about, { kind: 'order', of: null }),
    newEvent('clientSet', about, { client }),
    ...Object.entries(ANSWERS).map(([question, value]) =>
      newEvent('answered', about, { question: question as QuestionId, answer: { value, how: 'told' } }),
    ),
    ...Object.entries({ targetGr: 815, c2cIn: 28, quantity }).map(([field, value]) =>
      newEvent('planSet', about, { field, value } as EventBody<'planSet'>),
    ),
    ...PARTS.map((name) => {
      const { id, body } = partCalled(name)
      const count = body.kind === 'vane' ? 4 : 1
      return newEvent('lineSet', about, { line: { id: ids.id(), part: id, lot: lotOf(id), count } })
    }),
  ])
  const sheet = draftSheet(planned, shelf, clientFact.hash)
  const frozen = freeze(planned, sheet, said)
  const ready = await perform(frozen.events)
  const started = await perform(startSet(ready, sheet, ids).events)
  const { job: built } = await simulatedBuild(started, sheet, dice(3), { perform, id: () => ids.id() })
  const receipt = await repository.commit({
    id: command,
    ...said,
    facts: [clientFact, ...frozen.facts],
    events,
    personal: [personal],
  })
  if (receipt.kind !== 'saved' || receipt.events.at(-1)?.hash !== head.hash) throw new Error('chained otherwise')

  const closed = signOff(built, sheet, said)
  const afterSigning = await commit(closed)
  const signed = afterSigning.reduce<Job | null>(jobAfter, built)!
  const sending = [newEvent('sent', about, { on: at.slice(0, 10), count: quantity })]
  const sent = (await commit({ events: sending })).reduce<Job | null>(jobAfter, signed)!
  const asBuilt = sent.signedOff.at(-1)!.asBuilt
  return { repository, shelf, ids, commit, sheet, built, job: sent, asBuilt, partCalled, lotOf, said }
}

export type SentOrder = Awaited<ReturnType<typeof sentOrder>>
