import { describe, expect, it } from 'vitest'
import type { ArrowBuilt, AsBuilt } from '@/domain/bench/built'
import { accepted } from '@/domain/bench/bench'
import type { Reading } from '@/domain/bench/reading'
import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import type { JobEvent } from '@/domain/job/events'
import { chained, NO_EVENT } from '@/domain/records/event'
import { readable } from '@/domain/records/read-fact'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import { inUse, retirements, survivorWeights } from '@/domain/send/in-use'
import {
  beginRepair,
  changedSince,
  closeRepair,
  closingProblems,
  repairedRecord,
  repairProblems,
} from '@/domain/send/repair'
import type { RepairAsked } from '@/domain/send/repair'
import type { RepairStep } from '@/domain/send/repair-steps'
import { repairStepDone } from '@/domain/send/repair-steps'
import { openRepair, repairsOf } from '@/domain/send/repairs'
import { sentOrder } from '@tests/support/sent-order'
import { testId } from '@tests/support/test-id'

const { job, sheet, shelf, asBuilt, repository, partCalled } = await sentOrder()
const [fact] = readable([(await repository.fact(asBuilt))!])
const body = fact!.body as AsBuilt
const rows = readable((await repository.facts(body.arrows)).flatMap((each) => each ?? []))
const standing = { hash: asBuilt, body, arrows: new Map(rows.map((each) => [each.hash, each.body as ArrowBuilt])) }
const later = { by: 'Runa', at: '2026-09-01T10:00:00.000Z' }

const after = (from: Job, events: readonly EventDraft[]): Job =>
  (
    chained({ log: testId(77), seq: 0, hash: NO_EVENT }, { id: testId(78), ...later, events }) as readonly JobEvent[]
  ).reduce<Job | null>(jobAfter, from)!

const two = job.bench!.arrows[1]!
const nockLine = sheet.plan.lines.find(({ part }) => part === partCalled('Clip 11').id)!
const weighed = (value: number): Reading => ({
  point: 'finishedWeight',
  value,
  unit: 'gr',
  raw: `${value}`,
  source: 'typed',
  stable: true,
  attempt: 2,
  scale: 'Scale 1',
  takenAt: later.at,
})
const asked: RepairAsked = {
  arrow: two.id,
  line: nockLine.id,
  part: nockLine.part,
  lot: null,
  what: 'nock replaced',
  reason: 'cracked on a miss',
  before: weighed(807.1),
}

const REPAIR = testId(70)
const begun = after(job, [beginRepair(job, sheet, shelf, asked, REPAIR)])
const step = (from: Job, done: RepairStep) =>
  after(
    from,
    repairStepDone(from, openRepair(from, two.id)!, { step: done, sheet, cure: null }, { timer: testId(71), what: '' }),
  )
const ready = (['look', 'strip', 'fit'] as const).reduce(step, begun)

describe('a repair', () => {
  const closing = closeRepair(ready, sheet, openRepair(ready, two.id)!, weighed(818.3), later.at)
  const repaired = after(ready, closing)
  const record = repairedRecord(repaired, sheet, standing, later, asked.reason)!

  it('makes a new version of that arrow alone, with the reason and what it follows', () => {
    const arrows = record.facts.filter(({ kind }) => kind === 'arrowBuilt')
    const before = [...standing.arrows].find(([, each]) => each.arrow === two.id)![0]
    expect(arrows).toMatchObject([{ subject: two.id, parents: [before], reason: 'cracked on a miss', by: 'Runa' }])
    const set = record.facts.find(({ kind }) => kind === 'asBuilt')!
    expect(set).toMatchObject({ parents: [asBuilt], reason: 'cracked on a miss' })
    const kept = (set.body as AsBuilt).arrows.filter((hash) => body.arrows.includes(hash))
    expect(set.body).toMatchObject({ version: 2, arrows: expect.any(Array) as unknown })
    expect(kept).toHaveLength(2)
  })

  it('keeps the weight it was first built to, struck through with the reason', () => {
    const arrow = repaired.bench!.arrows.find(({ id }) => id === two.id)!
    expect(accepted(arrow, 'finishedWeight')!.reading.value).toBe(818.3)
    const old = arrow.readings.filter(({ reading }) => reading.point === 'finishedWeight')
    expect(old.map(({ withdrawn }) => withdrawn?.reason)).toEqual(['cracked on a miss', undefined])
  })

  it('keeps the arrow’s number and code', () => {
    const arrow = record.facts.find(({ kind }) => kind === 'arrowBuilt')!.body as ArrowBuilt
    expect([arrow.no, arrow.code]).toEqual([two.no, two.code])
  })

  it('leaves nothing to record twice', () => {
    const arrows = new Map(
      (record.facts.filter(({ kind }) => kind === 'arrowBuilt') as { hash: string; body: ArrowBuilt }[])
        .map((each) => [each.hash, each.body] as const)
        .concat([...standing.arrows].filter(([, each]) => each.arrow !== two.id)),
    )
    const set = record.facts.find(({ kind }) => kind === 'asBuilt')!
    const now = { hash: set.hash, body: set.body as AsBuilt, arrows }
    expect(changedSince(after(repaired, record.events), sheet, now)).toEqual([])
    expect(repairedRecord(repaired, sheet, now, later, 'again')).toBeNull()
    expect(repairedRecord(job, sheet, standing, later, 'nothing happened')).toBeNull()
  })

  it.each([
    ['without a reason', { ...asked, reason: ' ' }, 'no-reason'],
    ['that was not weighed first', { ...asked, before: undefined }, 'not-weighed-before'],
    ['with a head for a nock', { ...asked, part: partCalled('Two-blade 250').id }, 'other-kind'],
    ['with a part that is not there', { ...asked, part: testId(4) }, 'no-such-part'],
    ['of an arrow that is not of this set', { ...asked, arrow: testId(5) }, 'no-such-arrow'],
  ] as const)('%s is refused', (_, wrong, code) => {
    expect(repairProblems(job, sheet, shelf, wrong).map((each) => each.code)).toEqual([code])
    expect(() => beginRepair(job, sheet, shelf, wrong, REPAIR)).toThrow('cannot be begun')
  })

  it('goes step by step, and is weighed last', () => {
    const problems = (at: Job, finished?: Reading) =>
      closingProblems(at, sheet, openRepair(at, two.id)!, finished, later.at)
    expect(problems(begun, weighed(818.3))).toEqual([{ code: 'step-left', step: 'look' }])
    expect(problems(step(begun, 'look'), weighed(818.3))).toEqual([{ code: 'step-left', step: 'strip' }])
    expect(problems(ready)).toEqual([{ code: 'not-weighed' }])
    expect(problems(ready, weighed(818.3))).toEqual([])
    expect(closingProblems(repaired, sheet, openRepair(ready, two.id)!, weighed(818.3), later.at)).toEqual([
      { code: 'ended' },
    ])
  })

  it('is one at a time for an arrow', () => {
    expect(repairProblems(begun, sheet, shelf, asked)).toEqual([{ code: 'under-repair', no: 2, what: 'nock replaced' }])
    expect(repairProblems(begun, sheet, shelf, { ...asked, arrow: job.bench!.arrows[0]!.id })).toEqual([])
    expect(repairProblems(repaired, sheet, shelf, asked)).toEqual([])
  })

  it('leaves the record alone until it ends, and then stands in it with both weights and who did each step', () => {
    expect(changedSince(ready, sheet, standing)).toEqual([])
    const arrow = record.facts.find(({ kind }) => kind === 'arrowBuilt')!.body as ArrowBuilt
    expect(arrow.repairs).toMatchObject([
      { what: 'nock replaced', before: { value: 807.1 }, finished: { value: 818.3 }, cures: [], endedBy: 'Runa' },
    ])
    expect(arrow.confirmed.slice(two.confirmed.length).map((each) => [each.step, each.by])).toEqual([
      ['own:flexed and twisted', 'Runa'],
      ['own:old part off', 'Runa'],
      ['own:new part on', 'Runa'],
      ['inspect', 'Runa'],
    ])
  })

  it('given up leaves the part and the weight as they were', () => {
    const left = after(begun, [
      newEvent('repairLeft', { job: job.id, arrow: two.id }, { repair: REPAIR, reason: 'no. 3 was meant' }),
    ])
    const arrow = left.bench!.arrows.find(({ id }) => id === two.id)!
    expect(arrow.fitted).toEqual(two.fitted)
    expect(accepted(arrow, 'finishedWeight')).toEqual(accepted(two, 'finishedWeight'))
    expect(openRepair(left, two.id)).toBeUndefined()
    expect(changedSince(left, sheet, standing)[0]!.body.repairs).toMatchObject([{ finished: null }])
  })

  it('is over for an arrow that is retired instead', () => {
    const gone = after(begun, [
      newEvent('retired', { job: job.id, arrow: two.id }, { cause: 'it creaks', shots: null }),
    ])
    expect(repairsOf(gone).map(({ ended }) => ended?.how)).toEqual(['retired'])
  })

  it('waits for the set to be signed off', () => {
    expect(repairProblems({ ...job, signedOff: [] }, sheet, shelf, asked)).toEqual([{ code: 'not-signed-off' }])
  })
})

describe('a retired arrow', () => {
  const about = { job: job.id, arrow: two.id }
  const retired = after(job, [newEvent('retired', about, { cause: 'cracked behind the insert', shots: 140 })])

  it('says why, when, and after how many shots, and is in use no more', () => {
    expect(retirements(retired).get(two.id)).toMatchObject({
      cause: 'cracked behind the insert',
      shots: 140,
      by: 'Runa',
    })
    expect(inUse(retired).map(({ no }) => no)).toEqual([1, 3])
  })

  it('is not repaired, and keeps its number to itself', () => {
    expect(repairProblems(retired, sheet, shelf, asked)).toEqual([
      { code: 'retired', no: 2, cause: 'cracked behind the insert' },
    ])
    const numbers = retired.bench!.arrows.map(({ no }) => no)
    expect(new Set(numbers).size).toBe(numbers.length)
    expect(numbers).toContain(2)
  })

  it('the newest weight reported of a survivor counts', () => {
    const told = (value: number) => newEvent('reported', about, { point: 'survivorWeightGr', value })
    expect(survivorWeights(after(job, [told(815), told(813.2)])).get(two.id)).toBe(813.2)
  })
})
