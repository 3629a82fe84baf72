/** View rules small enough to predict by hand, over the real kinds of records. */
import type { ArrowRow, JobRow, LotRow, ViewRules } from '@/domain/records/view-rules'
import type { AnyEvent } from '@/domain/records/read-event'
import { wordsIn } from '@/domain/records/words-in'

export interface PlainJob extends JobRow {
  readonly name: string
  readonly events: number
  readonly notes: readonly string[]
}
export interface PlainArrow extends ArrowRow {
  readonly readings: readonly number[]
}
export interface PlainLot extends LotRow {
  readonly onHand: number
  readonly received: number
}

export const PLAIN_RULES: ViewRules<PlainJob, PlainArrow, PlainLot, unknown, readonly AnyEvent[]> = {
  begin: [],
  after: (events, event) => [...events, event],
  standsOn: (events) => ({
    subjects: events.flatMap((event) =>
      event.what === 'clientSet' && event.body.client !== null ? [{ kind: 'client', subject: event.body.client }] : [],
    ),
    facts: [],
  }),
  personalOf: (record) => {
    if ('what' in record) return record.what === 'noted' ? [record.body.note] : []
    return record.kind === 'client' ? [record.body.personal] : []
  },
  jobViews: ({ job, fold: events, personal }) => {
    const name = personal.flatMap((row) => row.fields['name'] ?? []).join(' ')
    const readings = new Map<string, number[]>()
    for (const event of events) {
      if (event.what === 'read' && event.arrow) {
        readings.set(event.arrow, [...(readings.get(event.arrow) ?? []), event.body.reading.value])
      }
    }
    return {
      job: {
        id: job,
        updated: events.at(-1)?.at ?? '',
        words: wordsIn(name),
        lots: [],
        name,
        events: events.length,
        notes: personal.flatMap((row) => row.fields['note'] ?? []),
      },
      arrows: [...readings].map(([id, values]) => ({ id, job, readings: values })),
      shares: new Map(),
    }
  },
  lotsOf: (record) => {
    if (!('what' in record)) return record.kind === 'lot' ? [record.subject] : []
    return record.what === 'stockMoved' && record.body.lot !== null ? [record.body.lot] : []
  },
  lotView: (lot, before, records) => {
    let { onHand, received } = before ?? { onHand: 0, received: 0 }
    for (const record of records) {
      if ('what' in record && record.what === 'stockMoved') onHand += record.body.by
      if ('kind' in record && record.kind === 'lot') received = Math.max(received, record.body.received)
    }
    return { id: lot, onShelf: 1, onHand, received }
  },
  lotWithJob: (lot, before) => before ?? { id: lot, onShelf: 1, onHand: 0, received: 0 },
  wordsOf: (fact, personal) =>
    fact.kind === 'client' ? personal.flatMap((row) => wordsIn(row.fields['name'] ?? '')) : [],
  partOf: (fact) => (fact.kind === 'lot' ? [fact.body.part] : []),
}
