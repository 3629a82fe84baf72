import { describe, expect, it } from 'vitest'
import { DEMO_PARTS } from '@/demo/demo-parts'
import type { Bench, BenchArrow } from '@/domain/bench/bench'
import { accepted } from '@/domain/bench/bench'
import type { DataPoint } from '@/domain/bench/data-points'
import { DATA_POINTS } from '@/domain/bench/data-points'
import { fitEvents } from '@/domain/bench/fit-events'
import { fixedOn, mendsFor } from '@/domain/bench/mends-for'
import { ownSheet } from '@/domain/bench/own-sheet'
import { nextThing } from '@/domain/bench/progress'
import { setLanding } from '@/domain/bench/set-forecast'
import { arrowBuiltOf } from '@/domain/bench/sign-off'
import { trimAdvice } from '@/domain/bench/trim-advice'
import type { Job } from '@/domain/job/job'
import { newEvent } from '@/domain/records/write'
import type { EventDraft } from '@/domain/records/write'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { EMPTY_SHELF } from '@/domain/stock/shelf'
import type { Shelf } from '@/domain/stock/shelf'
import { inGrains } from '@/core/quantity'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const HASH = 'a'.repeat(64)
const NOW = '2026-03-02T09:00:00.000Z'
const ARROW = testId(20_000)
const SHELF: Shelf = {
  ...EMPTY_SHELF,
  parts: new Map(DEMO_PARTS.map((body, i) => [testId(i + 1), { id: testId(i + 1), hash: HASH, body, rivals: [] }])),
}
const SHEET = demoSheet({ targetGr: 795, c2cIn: 28, quantity: 1 })
const WORKED = sheetFigures(SHEET)!

const read = (point: DataPoint, value: number, step: string): EventDraft =>
  newEvent(
    'read',
    { job: JOB, arrow: ARROW },
    {
      step,
      reading: {
        point,
        value,
        unit: DATA_POINTS[point].unit,
        raw: `${value}`,
        source: 'typed',
        stable: true,
        attempt: 1,
        scale: 'Scale 1',
        takenAt: NOW,
      },
    },
  )
const confirmed = (step: string) => newEvent('confirmed', { job: JOB, arrow: ARROW }, { step })

async function at(events: readonly EventDraft[]) {
  const { perform, begun } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: HASH, version: 1 }),
    newEvent('setStarted', { job: JOB }, { sheet: HASH, arrows: [{ id: ARROW, no: 1, code: 'T/1' }] }),
  ])
  const started = await begun
  return { job: events.length === 0 ? started : await perform(events), perform }
}
const ofJob = (job: Job) => {
  const bench = job.bench!
  const arrow = bench.arrows[0]!
  const own = setLanding(bench, SHEET, WORKED.items).arrows.get(ARROW)!
  return { bench, arrow, own }
}
const found = (bench: Bench, arrow: BenchArrow) =>
  mendsFor(setLanding(bench, SHEET, WORKED.items).arrows.get(arrow.id)!, {
    bench,
    sheet: SHEET,
    worked: WORKED,
    shelf: SHELF,
  })

/** A light arrow at the dry fit: 795 gr are wanted, 2.6 of front glue are still to come. */
const LIGHT_DRY = [
  read('c2c', 28, 'cut'),
  read('cutWeight', 328, 'weigh cut'),
  read('insertWeight', 157.8, 'weigh parts'),
  read('collarWeight', 15, 'weigh parts'),
  read('headWeight', 250, 'weigh parts'),
  confirmed('fletch'),
  read('fletchedWeight', 358, 'weigh fletched'),
  read('dryWeight', 785, 'dry fit'),
]

describe('mending a light arrow', () => {
  it('knows from the record alone what is final', async () => {
    const { job, perform } = await at([])
    expect(fixedOn(ofJob(job).arrow, job.bench!)).toEqual([])
    const cut = await perform(LIGHT_DRY)
    expect(fixedOn(ofJob(cut).arrow, cut.bench!)).toEqual(['shaft cut', 'fletched'])
    const bonded = await perform([confirmed('bond')])
    expect(fixedOn(ofJob(bonded).arrow, bonded.bench!)).toEqual(['shaft cut', 'fletched', 'post bonded'])
  })

  it('offers only what can still be done, the smallest change first, and no head', async () => {
    const { job, perform } = await at(LIGHT_DRY)
    const { bench, arrow, own } = ofJob(job)
    expect(own.state).toBe('light')
    const offered = found(bench, arrow)
    expect(offered?.ok).toBe(true)
    const all = offered!.ok ? offered!.value : []
    const gains = all.map(({ mend }) => inGrains(mend.gain))
    expect(gains).toEqual(gains.toSorted((a, b) => a - b))
    expect(all.map(({ change }) => change.now.name)).toContain('Ring 28')
    for (const { change, mend } of all) {
      expect(['wrap', 'vanes', 'head']).not.toContain(change.kind)
      // Lands inside the tolerance, or over it by what the post can give.
      expect(inGrains(mend.over)).toBeGreaterThanOrEqual(-SHEET.rules.toleranceGr)
    }
    const ring = all.find(({ change }) => change.now.name === 'Ring 28')!
    // Catalogue 28 in place of the 15.0 that was read.
    expect(inGrains(ring.mend.gain)).toBeCloseTo(13, 6)
    expect(ring.mend.focChange).toBeGreaterThan(0)
    expect(ring.mend.reserveChange).toBeLessThan(0)

    const bonded = await perform([confirmed('bond')])
    const late = found(bonded.bench!, bonded.bench!.arrows[0]!)
    const kinds = late?.ok ? late.value.map(({ change }) => change.kind) : []
    expect(kinds.filter((kind) => kind !== 'nock')).toEqual([])
  })

  it('writes what was fitted, counts on with the difference, and opens the trim again', async () => {
    const { job, perform } = await at([...LIGHT_DRY, confirmed('trim')])
    const { bench, arrow, own } = ofJob(job)
    const offered = found(bench, arrow)
    const { change, mend } = (offered!.ok ? offered!.value : []).find((each) => each.change.now.name === 'Ring 28')!
    const mended = await perform(
      fitEvents(JOB, arrow, { change, gain: mend.gain, reason: 'light: mended', now: NOW, line: testId(77) }),
    )
    const after = ofJob(mended)
    expect(inGrains(after.own.over)).toBeCloseTo(inGrains(own.over) + 13, 6)
    expect(accepted(after.arrow, 'dryWeight')!.reading).toMatchObject({
      value: 798,
      source: 'derived',
      raw: '785 + 13',
    })
    // The ring that came off was weighed; the new one is not yet.
    expect(accepted(after.arrow, 'collarWeight')).toBeUndefined()
    expect(after.arrow.readings.find((kept) => kept.reading.point === 'collarWeight')?.withdrawn?.reason).toBe(
      'light: mended',
    )
    expect(after.arrow.confirmed.map(({ step }) => step)).toEqual(['fletch'])
    expect(ownSheet(after.arrow, SHEET).plan.lines.map((line) => line.part)).toContain(change.fitted.part)
    // The record can be read without the shelf.
    const built = arrowBuiltOf(after.arrow, after.bench, SHEET)
    expect(built.fitted.find((each) => each.line === change.fitted.line)?.copy?.part.name).toBe('Ring 28')
    expect(nextThing(after.bench, SHEET)?.step.key).toBe('receive')
  })

  it('begins a new post untrimmed, and asks for the dry weight again', async () => {
    const { job, perform } = await at([...LIGHT_DRY, read('trimWeight', 783.8, 'trim')])
    const { bench, arrow } = ofJob(job)
    const offered = found(bench, arrow)
    const all = offered!.ok ? offered!.value : []
    const { change, mend } = all.find((each) => each.change.kind === 'insert')!
    const mended = await perform(
      fitEvents(JOB, arrow, { change, gain: mend.gain, reason: 'light: mended', now: NOW, line: testId(77) }),
    )
    const after = ofJob(mended)
    expect(accepted(after.arrow, 'dryWeight')).toBeUndefined()
    expect(accepted(after.arrow, 'trimWeight')).toBeUndefined()
    const length = trimAdvice(after.own, WORKED, SHEET).length
    expect(length?.ok).toBe(true)
  })

  it('adds a part on a line of the arrow’s own and asks for its weight', async () => {
    const sheet = demoSheet({ targetGr: 795, c2cIn: 28, quantity: 1 })
    const { job, perform } = await at([read('cutWeight', 320, 'weigh cut')])
    const { bench, arrow } = ofJob(job)
    const offered = mendsFor(setLanding(bench, sheet, WORKED.items).arrows.get(ARROW)!, {
      bench,
      sheet,
      worked: WORKED,
      shelf: SHELF,
    })
    const all = offered!.ok ? offered!.value : []
    const wrap = all.find(({ change }) => change.kind === 'wrap')!
    expect(wrap.change.was).toBeNull()
    const line = testId(78)
    const mended = await perform(
      fitEvents(JOB, arrow, { change: wrap.change, gain: wrap.mend.gain, reason: 'light', now: NOW, line }),
    )
    const after = ofJob(mended)
    expect(ownSheet(after.arrow, sheet).plan.lines.at(-1)).toMatchObject({ id: line, count: 1 })
    expect(inGrains(after.own.forecast.ok ? after.own.forecast.value.total.value : after.own.target)).toBeGreaterThan(0)
    expect(arrowBuiltOf(after.arrow, after.bench, sheet).fitted.at(-1)?.line).toBe(line)
  })
})
