import { describe, expect, it } from 'vitest'
import { dice } from '@/demo/dice'
import { simulatedBuild } from '@/demo/simulated-build'
import { computeFigures } from '@/headless/compute-figures'
import { slipsOf } from '@/domain/bench/slips'
import { inGrains } from '@/core/quantity'
import type { Mass } from '@/core/quantity'
import type { Job } from '@/domain/job/job'
import { newEvent, newFact } from '@/domain/records/write'
import type { EventDraft } from '@/domain/records/write'
import { RULES_SUBJECT } from '@/domain/shop/rules-subject'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { Sheet } from '@/domain/sheet/sheet'
import { firstToWeigh } from '@/domain/stock/first-to-weigh'
import { heldLots } from '@/domain/stock/held-lots'
import { jobShares } from '@/domain/stock/job-share'
import { withLearned } from '@/domain/stock/learned'
import { lotExpectation } from '@/domain/stock/lot-expectation'
import { lotViewOf, lotWithJob } from '@/domain/stock/lot-view'
import type { LotView } from '@/domain/stock/lot-view'
import { passesLearned } from '@/domain/stock/passes-learned'
import { lotsOfPart } from '@/domain/stock/lots-of-part'
import { EMPTY_SHELF } from '@/domain/stock/shelf'
import { takeWeighing } from '@/domain/stock/take-weighing'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const LOT = { shaft: testId(701), vane: testId(702), nock: testId(703) }
const SAID = { by: 'Ilse', at: '2026-01-01T00:00:00.000Z' }

/** A sheet whose shaft, vanes and nock come from lots. */
function lottedSheet(quantity: number): Sheet {
  const sheet = demoSheet({ targetGr: 785, c2cIn: 28, quantity })
  const kindOf = (id: string) => sheet.parts.find((each) => each.id === id)!.part.kind
  const lines = sheet.plan.lines.map((line) => {
    const kind = kindOf(line.part)
    const lot = kind === 'shaft' || kind === 'vane' || kind === 'nock' ? LOT[kind] : null
    return { ...line, lot }
  })
  const lots = lines.flatMap(({ part, lot }) =>
    lot === null
      ? []
      : [{ id: lot, lot: { part, code: lot.slice(-3), receivedOn: '2026-01-01', received: 200, numbered: [] } }],
  )
  const learned = [{ subject: LOT.vane, what: 'weight' as const, weighings: [{ gr: 73, pieces: 10 }] }]
  return { ...sheet, plan: { ...sheet.plan, lines }, lots, learned }
}

async function built(quantity: number, until?: string) {
  const sheet = lottedSheet(quantity)
  const fact = newFact(SAID, 'sheet', JOB, sheet)
  const arrows = Array.from({ length: quantity }, (_, i) => ({ id: testId(20_000 + i), no: i + 1, code: `T/${i + 1}` }))
  const { perform, id, begun } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: fact.hash, version: 1 }),
    newEvent('setStarted', { job: JOB }, { sheet: fact.hash, arrows }),
  ])
  const { job } = await simulatedBuild(
    await begun,
    sheet,
    dice(5),
    { perform, id },
    until === undefined ? {} : { until },
  )
  return { job, sheet, perform }
}
const sharesOf = (job: Job, sheet: Sheet) => jobShares(job, () => sheet)
function viewsOf(job: Job, sheet: Sheet): ReadonlyMap<string, LotView> {
  return new Map([...sharesOf(job, sheet)].map(([id, share]) => [id, lotWithJob(id, undefined, JOB, share)]))
}
const idOf = (sheet: Sheet, name: string) => sheet.parts.find(({ part }) => part.name === name)!.id

/** The arrow as it would come out untrimmed: what the headless figure is without a target. */
function withoutTarget(sheet: Sheet): Sheet {
  const { targetGr: _, ...plan } = sheet.plan
  return { ...sheet, plan }
}
function untrimmed(sheet: Sheet): Mass {
  const worked = sheetFigures(sheet)
  if (worked?.forecast.ok !== true) throw new Error('no forecast')
  return worked.forecast.value.total.value
}

describe('what the bench teaches', () => {
  it('reaches the shaft’s lot, the nocks, the vanes by the pan, both glues and the grinder', async () => {
    const { job, sheet } = await built(4)
    const shares = sharesOf(job, sheet)
    const raw = shares.get(LOT.shaft)!.weighed
    expect(raw).toHaveLength(4)
    for (const [i, arrow] of job.bench!.arrows.entries()) {
      const value = (point: string) => arrow.readings.findLast((kept) => kept.reading.point === point)!.reading.value
      expect(raw[i]!.weightGr).toBe(value('rawWeight'))
      // Page 1 of the job: fletched − cut − vanes − wrap is the vane glue; the vanes by the batch, 7.3 gr each.
      const glue = shares.get(idOf(sheet, 'Vane glue'))!.weighed[i]!
      expect(glue.weightGr).toBeCloseTo(value('fletchedWeight') - value('cutWeight') - 4 * 7.3, 9)
    }
    expect(shares.get(RULES_SUBJECT)!.weighed.every(({ what, weightGr }) => what === 'pass' && weightGr > 0)).toBe(true)
    expect(shares.get(LOT.nock)).toMatchObject({ used: 4, reserved: 0, arrows: ['T/1', 'T/2', 'T/3', 'T/4'] })
    expect(shares.get(LOT.vane)).toMatchObject({ used: 16, reserved: 0 })
  })

  it('narrows the forecast of the arrows still to come, at once, and to the headless figure', async () => {
    const { job, sheet } = await built(6, 'weigh cut')
    const before = sheetFigures(sheet)!
    const live = withLearned(sheet, viewsOf(job, sheet))
    const after = sheetFigures(live)!
    if (!before.forecast.ok || !after.forecast.ok) throw new Error('no forecast')
    const half = (each: typeof before) =>
      each.forecast.ok ? inGrains(each.forecast.value.total.high) - inGrains(each.forecast.value.total.value) : NaN
    expect(half(after)).toBeLessThan(half(before))
    const computed = computeFigures(withoutTarget(live), false)
    if (!computed.ok) throw new Error(computed.faults.join())
    expect((computed.output as { finishedGr: number }).finishedGr).toBeCloseTo(inGrains(untrimmed(live)), 9)
  })

  it('forgets a reading that was corrected away', async () => {
    const { job, sheet, perform } = await built(2, 'spin')
    const [first] = job.bench!.arrows
    const target = first!.readings[0]!.event
    const draft: EventDraft = newEvent(
      'corrected',
      { job: JOB, arrow: first!.id },
      { target, reading: null, reason: 'x' },
    )
    const after = await perform([draft])
    expect(sharesOf(job, sheet).get(LOT.shaft)!.weighed).toHaveLength(2)
    expect(sharesOf(after, sheet).get(LOT.shaft)!.weighed).toHaveLength(1)
  })

  it('gives a scrapped arrow’s unused parts back and keeps what is cut', async () => {
    const { job, sheet, perform } = await built(2, 'fletch')
    const after = await perform([
      newEvent('scrapped', { job: JOB, arrow: job.bench!.arrows[0]!.id }, { cause: 'split' }),
    ])
    expect(sharesOf(after, sheet).get(LOT.shaft)).toMatchObject({ used: 2, reserved: 0 })
    expect(sharesOf(job, sheet).get(LOT.vane)).toMatchObject({ used: 0, reserved: 8 })
    expect(sharesOf(after, sheet).get(LOT.vane)).toMatchObject({ used: 0, reserved: 4 })
  })

  it('tells each pass to the nearest of the shop’s three', () => {
    const pass = (weightGr: number) => ({ event: '', at: '', what: 'pass' as const, weightGr, pieces: 1 })
    const learned = passesLearned([0.5, 0.9, 1.3, 2.8, 3.4].map(pass), DEFAULT_RULES)
    expect(learned.map(({ removedGr }) => removedGr)).toEqual([[0.5], [0.9, 1.3], [2.8, 3.4]])
  })
})

describe('a weighing session', () => {
  const vane = demoSheet({}).parts.find(({ part }) => part.kind === 'vane')!.part
  const of = { part: vane, view: undefined, capacityGr: 1500 }

  it('takes fifty vanes in a row, and the band closes on them as the sheet’s own does', () => {
    const events = Array.from({ length: 50 }, (_, i) => ({
      ...newEvent(
        'lotWeighed',
        { job: null },
        { lot: LOT.vane, weightGr: 7.3 + (i % 3) / 10, pieces: 1, raw: '', scale: '' },
      ),
      hash: String(i),
      at: '2026-01-02',
    }))
    const view = lotViewOf(LOT.vane, undefined, events as never)
    const [before, after] = [lotExpectation(vane, undefined), lotExpectation(vane, view)]
    if (!before.ok || !after.ok) throw new Error('no expectation')
    expect(inGrains(before.value.estimate.value)).toBeCloseTo(7.2, 9)
    expect(inGrains(after.value.estimate.value)).toBeCloseTo((4 * 7.2 + 369.9) / 54, 9) // decision 0008: the catalogue counts for four pieces
    const sheet = withLearned(lottedSheet(1), new Map([[LOT.vane, view]]))
    const item = sheetFigures(sheet)!.items.find(({ part }) => part.kind === 'vane')!.item
    expect(inGrains(item.mean)).toBeCloseTo(4 * inGrains(after.value.estimate.value), 9)
  })

  it('asks about grams, a moved point and a piece unlike the others, and keeps it when it is meant', () => {
    expect(takeWeighing('7.2', 1, of)).toEqual({ kind: 'taken', weightGr: 7.2, raw: '7.2' })
    expect(takeWeighing('4.67', 10, of)).toMatchObject({ kind: 'asked', slips: [{ code: 'grams-for-grains' }] })
    expect(takeWeighing('72', 1, of)).toMatchObject({ kind: 'asked', slips: [{ code: 'decimal-moved' }] })
    expect(takeWeighing('9.5', 1, of)).toMatchObject({ kind: 'asked', slips: [{ code: 'unlike-the-others' }] })
    expect(takeWeighing('9.5', 1, of, true)).toMatchObject({ kind: 'taken', weightGr: 9.5 })
    expect(takeWeighing('72', 10, of)).toMatchObject({ kind: 'taken' })
    expect(takeWeighing('1600', 1, of)).toMatchObject({ kind: 'over capacity' })
    expect(takeWeighing('some', 1, of)).toMatchObject({ kind: 'refused' })
  })

  it('does not ask twice about what a sum of weighed parts already says', () => {
    const codes = slipsOf(412, 'gr', { expected: { value: 400, half: 1, closure: true } }).map(({ code }) => code)
    expect(codes).toEqual(['does-not-add-up'])
  })
})

describe('a shop that has weighed nothing', () => {
  const { parts, lots } = lottedSheet(1)
  const standing = <T>(id: string, body: T) => [id, { id, hash: '0'.repeat(64), body, rivals: [] }] as const
  const shelf = {
    ...EMPTY_SHELF,
    parts: new Map(parts.map(({ id, part }) => standing(id, part))),
    lots: new Map(lots.map(({ id, lot }) => standing(id, lot))),
  }

  it('is led to the lots that scatter most, until the first weight is in', () => {
    expect(firstToWeigh(EMPTY_SHELF)).toBeUndefined()
    expect(firstToWeigh(shelf)?.lots.map(({ kind }) => kind)).toEqual(['shaft', 'nock', 'vane'])
    const event = {
      ...newEvent('lotWeighed', { job: null }, { lot: LOT.vane, weightGr: 7.2, pieces: 1, raw: '', scale: '' }),
      hash: 'a',
      at: '',
    }
    const weighed = { ...shelf, lotViews: new Map([[LOT.vane, lotViewOf(LOT.vane, undefined, [event] as never)]]) }
    expect(firstToWeigh(weighed)).toBeUndefined()
  })
})

describe('a lot on hold', () => {
  it('is offered no more, and the bench is told of it', () => {
    const sheet = lottedSheet(1)
    const { id, lot } = sheet.lots.find((each) => each.id === LOT.vane)!
    const standing = (body: typeof lot) => ({ id, hash: '0'.repeat(64), body, rivals: [] })
    const shelf = (body: typeof lot) => ({ ...EMPTY_SHELF, lots: new Map([[id, standing(body)]]) })
    expect(lotsOfPart(shelf(lot), lot.part)).toHaveLength(1)
    expect(heldLots(sheet, [], shelf(lot))).toEqual([])
    const held = shelf({ ...lot, hold: 'bent' })
    expect(lotsOfPart(held, lot.part)).toEqual([])
    expect(heldLots(sheet, [], held)).toEqual([{ code: lot.code, part: 'Broad vane 2.6', why: 'bent' }])
    expect(heldLots(sheet, [{ fitted: [] }], held)).toHaveLength(1)
  })
})
