import { describe, expect, it } from 'vitest'
import { inGrains, inInches } from '@/core/quantity'
import { acceptCall } from '@/domain/call/accept-call'
import type { Answer } from '@/domain/call/answer'
import { clientWriting, NO_CLIENT } from '@/domain/call/client-record'
import { valueIn } from '@/domain/call/follows'
import { implications } from '@/domain/call/implications'
import { measuringItems, openQuestions } from '@/domain/call/open-questions'
import { priceOf } from '@/domain/call/price-lines'
import { priorAnswers, priorBow } from '@/domain/call/prior-answers'
import type { QuestionId } from '@/domain/call/questions'
import type { JobEvent } from '@/domain/job/events'
import { jobOf } from '@/domain/job/job'
import type { Job } from '@/domain/job/job'
import { chained, NO_EVENT } from '@/domain/records/event'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { sheet } from '@/domain/sheet/sheet'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { countedIds } from '@tests/storage/fresh-shop'
import { stockedShelf } from './stocked-shelf'
import { CALLED_AT, TODAY } from './told-call'

const said = { by: 'Ansa', at: CALLED_AT }
const rules = {
  ...DEFAULT_RULES,
  prices: { ...DEFAULT_RULES.prices, perArrowCents: 9_000, indexingCents: 500, depositPercent: 50, taxPercent: 8 },
}
const shelf = { ...stockedShelf(), rules }
type Told = Partial<Record<QuestionId, number | string | boolean | [number, number][]>>

let seed = 40
function calling() {
  const ids = countedIds((seed += 1))
  const job = ids.id()
  let head = { log: ids.id(), seq: 0, hash: NO_EVENT }
  const story: JobEvent[] = []
  const write = (events: readonly EventDraft[]) => {
    const made = chained(head, { id: ids.id(), ...said, events }) as readonly JobEvent[]
    const last = made.at(-1)
    if (last !== undefined) head = { log: last.log, seq: last.seq, hash: last.hash }
    story.push(...made)
  }
  const answered = (question: QuestionId, answer: Answer) => newEvent('answered', { job }, { question, answer })
  write([newEvent('opened', { job }, { kind: 'order', of: null })])
  return {
    ids,
    job: () => jobOf(story)!,
    write,
    tell: (told: Told) =>
      write(Object.entries(told).map(([id, value]) => answered(id as QuestionId, { value, how: 'told' }))),
    putOff: (...open: readonly QuestionId[]) =>
      write(open.map((id) => answered(id, { unknown: true, owedBy: 'client', due: '2026-11-30' }))),
    accept: () => {
      const job = jobOf(story)!
      const follows = implications(job.answers, rules, shelf, TODAY)
      const agreed = acceptCall({ job, follows, price: priceOf(job.answers, rules), shelf, bowHeads: [] }, said, ids)
      write(agreed.events)
      return { follows, facts: agreed.facts, events: agreed.events }
    },
  }
}

const draft = (job: Job) => sheet.parse(draftSheet(job, shelf, null))

describe('three calls from script', () => {
  it('a bison order with most facts known ends in a plan near 900 gr, a price and a date', () => {
    const call = calling()
    call.tell({
      quarry: 'bison',
      place: 'South Dakota',
      travelOn: '2027-01-14',
      guideLeastGr: 850,
      bowKind: 'compound',
      peakDrawWeightLb: 72,
      labelDrawWeightLb: 70,
      drawLengthIn: 28.5,
      restAheadOfPivotIn: 0.5,
      chronograph: [
        [452, 268],
        [601, 236.5],
      ],
      looseWith: 'release aid',
      wishWeightGr: 900,
      headKind: 'broadhead',
      headWeightGr: 300,
      bevelHand: 'right',
      fletchSide: 'right',
      indexing: 'cock vane',
      quantity: 6,
      spares: 1,
    })
    const { follows, facts } = call.accept()
    expect(follows.contradictions).toEqual([])
    const job = call.job()
    expect(job.plan).toMatchObject({
      targetGr: 900,
      quantity: 6,
      spares: 1,
      fletchSide: 'right',
      indexPlane: 'cock vane',
    })
    expect(job.plan.c2cIn).toBeCloseTo(Math.ceil(inInches(valueIn(follows.shortest)!.c2c) / 0.25) * 0.25, 9)
    expect(job.plan.lines.map(({ part }) => shelf.parts.get(part)?.body.name)).toEqual(['two-blade 300'])
    expect(job.accepted).toMatchObject({
      shipOn: '2026-12-03',
      priceCents: Math.round(7 * 9_500 * 1.08),
      currency: 'USD',
    })
    expect(facts.map(({ kind, subject }) => [kind, subject])).toEqual([['bow', job.bow]])
    expect(facts[0]?.body).toMatchObject({
      peakDrawWeightLb: 72,
      chronograph: [
        { arrowGr: 452, speedFps: 268 },
        { arrowGr: 601, speedFps: 236.5 },
      ],
    })
    expect(draft(job)).toMatchObject({
      hunt: { quarry: 'bison', place: 'South Dakota', travelOn: '2027-01-14' },
      bow: { drawLengthIn: 28.5 },
    })
  })

  it('a moose order with half unknown and one contradiction ends in open questions and a measuring sheet', () => {
    const call = calling()
    call.tell({
      quarry: 'moose',
      peakDrawWeightLb: 65,
      labelDrawWeightLb: 60,
      wishWeightGr: 650,
      quantity: 3,
    })
    call.putOff('drawLengthIn', 'markAtRestIn', 'markAtRiserIn', 'braceHeightIn', 'travelOn')
    const { follows } = call.accept()
    const job = call.job()
    expect(follows.contradictions.map(({ code }) => code)).toEqual(['draw weight off label'])
    expect(openQuestions(job.answers).map(({ question }) => question.id)).toEqual([
      'travelOn',
      'drawLengthIn',
      'markAtRestIn',
      'markAtRiserIn',
      'braceHeightIn',
    ])
    expect(measuringItems(job.answers).map(({ measure }) => measure)).toEqual(['draw length', 'marks', 'brace height'])
    expect(openQuestions(job.answers).every(({ owedBy, due }) => owedBy === 'client' && due === '2026-11-30')).toBe(
      true,
    )
    expect(job.plan).toMatchObject({ targetGr: 650, quantity: 3 })
    // From the draw length that is assumed until it is measured.
    expect(job.plan.c2cIn).toBeCloseTo(Math.ceil(inInches(valueIn(follows.shortest)!.c2c) / 0.25) * 0.25, 9)
    expect(draft(job)).toMatchObject({ hunt: { quarry: 'moose' }, bow: { peakDrawWeightLb: 65 } })
    expect(valueIn(follows.ship)).toMatchObject({ travelOn: null, readyOn: '2026-12-03' })
    expect(job.accepted).toMatchObject({ shipOn: '2026-12-03', priceCents: Math.round(3 * 9_000 * 1.08) })
  })

  it('a known client with a new bow is offered what was said before, and gets a bow of its own', () => {
    const before = calling()
    before.tell({
      quarry: 'elk',
      bowKind: 'compound',
      peakDrawWeightLb: 68,
      drawLengthIn: 29,
      wishWeightGr: 640,
      travelOn: '2026-09-01',
    })
    before.accept()
    const offered = priorAnswers([before.job()])
    expect(offered.peakDrawWeightLb).toMatchObject({ value: 68, jobCode: before.job().code })
    expect(offered.travelOn).toBeUndefined()
    expect(priorBow([before.job()])).toBe(before.job().bow)

    const call = calling()
    call.tell({ quarry: 'elk', bowKind: 'recurve', peakDrawWeightLb: 55, drawLengthIn: 28, wishWeightGr: 600 })
    call.accept()
    expect(call.job().bow).not.toBe(before.job().bow)
    const job = call.job()
    expect(job.plan).toMatchObject({ targetGr: 600, quantity: 6 })
    expect(draft(job).bow).toMatchObject({ kind: 'recurve', peakDrawWeightLb: 55, drawLengthIn: 28 })
    expect(job.accepted).toMatchObject({ shipOn: '2026-12-03', priceCents: Math.round(6 * 9_000 * 1.08) })
    expect(measuringItems(job.answers)).toEqual([])
    expect(inGrains(valueIn(implications(job.answers, rules, shelf, TODAY).weight)!.working)).toBeCloseTo(600, 9)
  })

  it('asks nothing twice, and keeps what was planned since', () => {
    const call = calling()
    call.tell({ wishWeightGr: 900, quantity: 6 })
    call.accept()
    call.write([newEvent('planSet', { job: call.job().id }, { field: 'targetGr', value: 912 })])
    const again = call.accept()
    expect(again.events.map(({ what }) => what)).toEqual(['accepted'])
    expect(call.job().plan.targetGr).toBe(912)
  })
})

describe('clientWriting', () => {
  it('keeps two clients of one name apart, and everything personal out of the facts', () => {
    const ids = countedIds(7)
    const job = ids.id()
    const one = clientWriting(job, NO_CLIENT, { fields: { name: 'Ada Oduya' } }, said, ids)
    const two = clientWriting(job, NO_CLIENT, { fields: { name: 'Ada Oduya' } }, said, ids)
    expect(one.facts[0]?.subject).not.toBe(two.facts[0]?.subject)
    expect(one.personal[0]?.hash).not.toBe(two.personal[0]?.hash)
    expect(JSON.stringify([one.facts, one.events])).not.toContain('Oduya')
    expect(one.events.map(({ what }) => what)).toEqual(['clientSet'])
  })

  it('adds to a known client without changing the job', () => {
    const ids = countedIds(8)
    const first = clientWriting(ids.id(), NO_CLIENT, { fields: { name: 'Ada Oduya' } }, said, ids)
    const fact = first.facts[0]!
    const now = { subject: fact.subject, parents: [fact.hash], fields: { name: 'Ada Oduya' }, consent: false }
    const second = clientWriting(ids.id(), now, { fields: { phone: '555 0101' }, consent: true }, said, ids)
    expect(second.events).toEqual([])
    expect(second.facts[0]).toMatchObject({ subject: fact.subject, parents: [fact.hash], body: { consent: true } })
    expect(second.personal[0]?.fields).toEqual({ name: 'Ada Oduya', phone: '555 0101' })
  })
})
