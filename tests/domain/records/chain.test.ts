import { describe, expect, it } from 'vitest'
import { follow, startOf } from '@/domain/records/chain'
import { chained } from '@/domain/records/event'
import type { Event } from '@/domain/records/event'

const LOG = '01987654-3210-7abc-8def-0123456789ab'
const JOB = '01987654-3210-7abc-8def-0123456789ac'
const COMMAND = '01987654-3210-7abc-8def-0123456789ad'

const events = chained(startOf(LOG), {
  id: COMMAND,
  by: 'Ansa',
  at: '2031-05-04T09:30:00.000Z',
  events: [412.3, 415, 411.8, 413.1].map((value) => ({ job: JOB, what: 'read', schemaVersion: 1, body: { value } })),
})

const problemsOf = (log: readonly Event[]) => {
  let head = startOf(LOG)
  return log.flatMap((event) => {
    const step = follow(head, event)
    head = step.head
    return step.problems
  })
}

describe('a log', () => {
  it('is whole as it was chained', () => {
    expect(problemsOf(events)).toEqual([])
    expect(events.map((event) => event.seq)).toEqual([1, 2, 3, 4])
  })

  it('shows a changed reading', () => {
    const [a, b, c, d] = events as [Event, Event, Event, Event]
    expect(problemsOf([a, { ...b, body: { value: 414 } }, c, d])).toEqual([{ problem: 'changed', log: LOG, seq: 2 }])
  })

  it('shows an event taken out', () => {
    const [a, , c, d] = events as [Event, Event, Event, Event]
    expect(problemsOf([a, c, d])).toEqual([{ problem: 'gap', log: LOG, from: 2, to: 2 }])
  })

  it('shows an event hashed anew, by the one that follows it', () => {
    const [a, b, c, d] = events as [Event, Event, Event, Event]
    const other = chained(a, { id: COMMAND, by: 'Ansa', at: b.at, events: [{ ...b, body: { value: 414 } }] })
    const forged = { ...other[0]!, seq: 2 }
    expect(problemsOf([a, forged, c, d])).toEqual([{ problem: 'unchained', log: LOG, seq: 3 }])
  })

  it('shows two events in one place', () => {
    const [a, b, c, d] = events as [Event, Event, Event, Event]
    const fork = chained(a, { id: JOB, by: 'Ansa', at: b.at, events: [b] })[0]!
    expect(problemsOf([a, b, fork, c, d])).toEqual([
      { problem: 'fork', log: LOG, seq: 2 },
      { problem: 'unchained', log: LOG, seq: 3 },
    ])
  })
})
