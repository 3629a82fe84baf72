import { describe, expect, it } from 'vitest'
import { cureInTheWay } from '@/domain/bench/cure-state'
import { due, running } from '@/domain/bench/cure-timer'
import { holdBefore } from '@/domain/bench/hold-before'
import { lastDone } from '@/domain/bench/last-done'
import { notesAt } from '@/domain/bench/notes-at'
import { DEFAULT_ROUTE } from '@/domain/bench/route'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const HASH = 'a'.repeat(64)
const [ONE, TWO] = [testId(20_000), testId(20_001)]
const SHEET = demoSheet({ targetGr: 785, c2cIn: 28, quantity: 2 })
const STARTED = '2026-01-01T08:00:00.000Z'
const DUE = '2026-01-02T08:00:00.000Z'
const BEFORE = '2026-01-02T07:59:59.000Z'

const confirmed = (step: string, arrow?: string) =>
  newEvent('confirmed', { job: JOB, ...(arrow === undefined ? {} : { arrow }) }, { step })
const glued = (step: 'fletch' | 'bond') => [ONE, TWO].map((arrow) => confirmed(step, arrow))
const timed = (step: string, id = 40_000) =>
  newEvent(
    'timerSet',
    { job: JOB },
    { timer: testId(id), step, what: step, startedAt: STARTED, dueAt: DUE, temperatureC: 20 },
  )

async function benchWith(events: readonly EventDraft[]) {
  const { begun, perform } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: HASH, version: 1 }),
    newEvent(
      'setStarted',
      { job: JOB },
      {
        sheet: HASH,
        arrows: [
          { id: ONE, no: 1, code: 'T/1' },
          { id: TWO, no: 2, code: 'T/2' },
        ],
      },
    ),
  ])
  const job = await begun
  return (events.length === 0 ? job : await perform(events)).bench!
}
const at = (step: string, arrow: string | null = null) => ({
  step: DEFAULT_ROUTE.find((each) => each.key === step)!,
  arrow,
})

describe('a cure in the way', () => {
  it('is one that still runs, at the cure and at packing, to the second', async () => {
    const bench = await benchWith([...glued('bond'), timed('bond')])
    for (const step of ['cure', 'pack']) {
      expect(cureInTheWay(step, bench, SHEET, BEFORE)?.running.map(({ step: of }) => of)).toEqual(['bond'])
      expect(cureInTheWay(step, bench, SHEET, DUE)).toBeUndefined()
    }
    expect(cureInTheWay('inspect', bench, SHEET, BEFORE)).toBeUndefined()
  })

  it('is also one that was never timed, as in a room too cold to cure', async () => {
    const bench = await benchWith([...glued('fletch'), ...glued('bond'), timed('fletch')])
    expect(cureInTheWay('cure', bench, SHEET, DUE)).toEqual({ running: [], unstarted: ['front'] })
  })

  it('is none before anything is glued, and none of a timer for something else', async () => {
    expect(cureInTheWay('cure', await benchWith([]), SHEET, STARTED)).toBeUndefined()
    expect(cureInTheWay('cure', await benchWith([timed('trim')]), SHEET, BEFORE)).toBeUndefined()
  })

  it('is out of the way once it was opened as a deviation', async () => {
    const opened = newEvent(
      'deviationOpened',
      { job: JOB },
      { id: testId(50_000), step: 'cure', point: null, required: 'cured', found: 'not', why: '', decision: null },
    )
    const bench = await benchWith([...glued('bond'), opened])
    expect(cureInTheWay('cure', bench, SHEET, DUE)).toBeUndefined()
    expect(cureInTheWay('pack', bench, SHEET, DUE)).toBeUndefined()
  })
})

describe('timers', () => {
  it('run until they are due, and are due until they are put away', async () => {
    const bench = await benchWith([timed('trim', 1), timed('cut', 2)])
    expect(running(bench, BEFORE)).toHaveLength(2)
    expect(due(bench, BEFORE)).toHaveLength(0)
    expect(running(bench, DUE)).toHaveLength(0)
    expect(due(bench, DUE)).toHaveLength(2)
    const ended = newEvent('timerEnded', { job: JOB }, { timer: testId(1), endedAt: DUE })
    expect(due(await benchWith([timed('trim', 1), timed('cut', 2), ended]), DUE)).toHaveLength(1)
  })
})

describe('a hold point', () => {
  it('holds every step after it until the set is through it', async () => {
    const held = await benchWith([])
    const through = await benchWith([confirmed('budget')])
    expect(holdBefore(at('budget').step, held, SHEET)).toBeUndefined()
    expect(holdBefore(at('fletch').step, held, SHEET)?.key).toBe('budget')
    expect(holdBefore(at('fletch').step, through, SHEET)).toBeUndefined()
    expect(holdBefore(at('inspect').step, through, SHEET)?.key).toBe('cure')
  })
})

describe('undo', () => {
  const read = (arrow: string, value: number, step = 'square') =>
    newEvent(
      'read',
      { job: JOB, arrow },
      {
        step,
        reading: {
          point: 'cutRunOut',
          value,
          unit: 'in',
          raw: `${value}`,
          source: 'typed',
          stable: true,
          attempt: 1,
          scale: '',
          takenAt: STARTED,
        },
      },
    )
  const arrowOf = (bench: Awaited<ReturnType<typeof benchWith>>, id: string) =>
    bench.arrows.find((each) => each.id === id)!

  it('takes the confirmation back first, then the last reading', async () => {
    const { step } = at('square')
    const bench = await benchWith([read(ONE, 0.001), read(ONE, 0.002), confirmed('square', ONE), read(TWO, 0.003)])
    expect(lastDone(bench, step, arrowOf(bench, ONE))).toMatchObject({ kind: 'confirmed' })
    expect(lastDone(bench, step, arrowOf(bench, TWO))).toMatchObject({
      kind: 'read',
      kept: { reading: { value: 0.003 } },
    })
    const taken = newEvent('unconfirmed', { job: JOB, arrow: ONE }, { step: 'square', reason: 'undone at the bench' })
    const after = await benchWith([read(ONE, 0.001), read(ONE, 0.002), confirmed('square', ONE), taken])
    expect(lastDone(after, step, arrowOf(after, ONE))).toMatchObject({
      kind: 'read',
      kept: { reading: { value: 0.002 } },
    })
  })

  it('takes back what was confirmed for the set, and nothing where nothing was done', async () => {
    const bench = await benchWith([confirmed('budget')])
    expect(lastDone(bench, at('budget').step, null)).toEqual({ kind: 'confirmed', arrow: null })
    expect(lastDone(bench, at('cure').step, null)).toBeUndefined()
    expect(lastDone(bench, at('receive').step, arrowOf(bench, ONE))).toBeUndefined()
  })
})

describe('notes of the bench', () => {
  it('stand with the picture that was kept with them, newest first, for an arrow or the set', async () => {
    const note = (hash: string) => newEvent('noted', { job: JOB, arrow: ONE }, { step: 'bond', note: hash })
    const photo = (hash: string) => newEvent('photographed', { job: JOB, arrow: ONE }, { step: 'bond', photo: hash })
    const { begun, perform } = inMemoryJob([
      opened(JOB),
      newEvent('frozen', { job: JOB }, { sheet: HASH, version: 1 }),
      newEvent('setStarted', { job: JOB }, { sheet: HASH, arrows: [{ id: ONE, no: 1, code: 'T/1' }] }),
    ])
    await begun
    await perform([note('b'.repeat(64)), photo('c'.repeat(64))])
    await perform([newEvent('noted', { job: JOB }, { step: 'pack', note: 'd'.repeat(64) })])
    const job = await perform([photo('e'.repeat(64))])
    expect(notesAt(job.bench!).map(({ no, note: n, photo: p }) => [no, n?.[0] ?? null, p?.[0] ?? null])).toEqual([
      [1, null, 'e'],
      [null, 'd', null],
      [1, 'b', 'c'],
    ])
  })
})
