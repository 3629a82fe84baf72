import { describe, expect, it } from 'vitest'
import { disputes } from '@/domain/bench/disputes'
import type { JobEvent } from '@/domain/job/events'
import { jobOf } from '@/domain/job/job'
import { chained } from '@/domain/records/event'
import { startOf } from '@/domain/records/chain'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import { signOffProblems } from '@/domain/bench/sign-off'
import { demoSheet } from '@tests/support/demo-sheet'
import { testId } from '@tests/support/test-id'

const JOB = testId(1)
const ARROW = testId(2)
const SHEET = 'a'.repeat(64)

const reading = (value: number, attempt = 1) => ({
  point: 'cutWeight' as const,
  value,
  unit: 'gr' as const,
  raw: String(value),
  source: 'typed' as const,
  stable: true,
  attempt,
  scale: 'Scale 1',
  takenAt: '2031-05-04T09:30:00.000Z',
})
const read = (value: number, attempt?: number) =>
  newEvent('read', { job: JOB, arrow: ARROW }, { step: 'weigh cut', reading: reading(value, attempt) })
const corrected = (target: string, value: number | null) =>
  newEvent(
    'corrected',
    { job: JOB, arrow: ARROW },
    { target, reading: value === null ? null : reading(value, 2), reason: 'slip' },
  )

/** What one device wrote, in a log of its own. */
const device = (log: number, minute: number, events: readonly EventDraft[], by = `builder ${log}`) =>
  chained(startOf(testId(log)), {
    id: testId(500 + log),
    by,
    at: `2031-05-04T09:${minute}:00.000Z`,
    events,
  }) as readonly JobEvent[]

const BEGUN = device(10, 10, [
  newEvent('opened', { job: JOB }, { kind: 'order', of: null }),
  newEvent('setStarted', { job: JOB }, { sheet: SHEET, arrows: [{ id: ARROW, no: 1, code: 'T/1' }] }),
])
const disputesOf = (...more: readonly (readonly JobEvent[])[]) => {
  const events = [...BEGUN, ...more.flat()]
  return disputes(jobOf(events)!.bench!, events).map(({ no, point, readings }) => ({
    no,
    point,
    values: readings.map((kept) => kept.reading.value),
  }))
}

describe('disputes', () => {
  it('are the same weighing on two devices, in whatever order they arrive', () => {
    const [mine, theirs] = [device(11, 20, [read(412.3)]), device(12, 21, [read(414)])]
    expect(disputesOf(mine, theirs)).toEqual([{ no: 1, point: 'cutWeight', values: [412.3, 414] }])
    expect(disputesOf(theirs, mine)).toEqual(disputesOf(mine, theirs))
  })

  it('are not a device weighing again, nor one that goes on where the other left off', () => {
    expect(disputesOf(device(11, 20, [read(412.3), read(412.4)]))).toEqual([])
    expect(disputesOf(device(11, 20, [read(412.3)]), device(12, 30, [read(412.4, 2)]))).toEqual([])
  })

  it('are two corrections of one reading', () => {
    const first = device(11, 20, [read(412.3)])
    const target = first[0]!.hash
    const both = [device(12, 30, [corrected(target, 421.3)]), device(13, 31, [corrected(target, 431.2)])]
    expect(disputesOf(first, ...both)).toEqual([{ no: 1, point: 'cutWeight', values: [421.3, 431.2] }])
  })

  it('end when one of them is withdrawn, and until then nobody signs off', () => {
    const [mine, theirs] = [device(11, 20, [read(412.3)]), device(12, 21, [read(414)])]
    const kept = device(13, 40, [corrected(mine[0]!.hash, null)])
    expect(disputesOf(mine, theirs, kept)).toEqual([])

    const problems = (events: readonly JobEvent[]) =>
      signOffProblems(jobOf(events)!, demoSheet({ quantity: 1 }), events).map(({ code }) => code)
    expect(problems([...BEGUN, ...mine, ...theirs])).toContain('disputed-reading')
    expect(problems([...BEGUN, ...mine, ...theirs, ...kept])).not.toContain('disputed-reading')
  })
})
