import { describe, expect, it } from 'vitest'
import { valueOf } from '@/domain/call/answers'
import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import type { JobEvent } from '@/domain/job/events'
import { chained, NO_EVENT } from '@/domain/records/event'
import type { EventDraft } from '@/domain/records/write'
import { newEvent } from '@/domain/records/write'
import { decideKit, kitProblems, kitResults, likedReserve, nearest, sendKit } from '@/domain/send/kit'
import { kitChoices } from '@/domain/send/kit-choices'
import type { KitPoint } from '@/domain/send/kit'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { sentOrder } from '@tests/support/sent-order'
import { testId } from '@tests/support/test-id'
import { answer } from '@tests/support/answer'

const { job: order, sheet, shelf, ids, partCalled, lotOf } = await sentOrder()
let commands = 0
const after = (from: Job, events: readonly EventDraft[]): Job => {
  commands += 1
  const command = { id: testId(9100 + commands), by: 'Runa', at: '2026-04-01T08:00:00.000Z', events }
  const told = chained({ log: testId(91), seq: commands * 50, hash: NO_EVENT }, command) as readonly JobEvent[]
  return told.reduce<Job | null>(jobAfter, from)!
}
const shaft = (name: string, finishedGr: number) => {
  const { id } = partCalled(name)
  return { part: id, lot: lotOf(id), finishedGr }
}
const SHAFTS = [shaft('Heron 175', 836), shaft('Heron 200', 815), shaft('Heron 260', 790)]
const sent = after(order, sendKit(order, shelf, SHAFTS, '2026-04-01', ids))
const kit = sent.kits[0]!
const report = (no: number, point: KitPoint, value: number) =>
  newEvent('reported', { job: order.id, arrow: kit.arrows[no - 1]!.arrow }, { point, value })
// Bare shafts at twenty yards, invented: the stiffest hits nearest.
const reported = after(sent, [
  report(1, 'bareHighIn', 0.5),
  report(1, 'bareLeftIn', -0.5),
  report(1, 'speedFps', 205.5),
  report(2, 'bareHighIn', 3),
  report(2, 'bareLeftIn', 4),
  report(3, 'bareHighIn', 6),
  report(3, 'bareLeftIn', 8),
])
const results = kitResults(reported, shelf, reported.kits[0]!)
const shaftOf = (job: Job) => {
  const sheet = draftSheet(job, shelf, null)
  return sheet.parts.find(({ part }) => part.kind === 'shaft')!.part.name
}

describe('a test kit', () => {
  it('goes out with numbers that no other arrow of the job has', () => {
    expect(kit.arrows.map(({ no }) => no)).toEqual([1, 2, 3])
    expect(kit.arrows.map(({ code }) => code)).toEqual([1, 2, 3].map((no) => `${order.code}/T${no}`))
    const again = after(sent, sendKit(sent, shelf, SHAFTS.slice(0, 2), '2026-05-01', ids))
    expect(again.kits[1]!.arrows.map(({ no }) => no)).toEqual([4, 5])
  })

  it('is two arrows or three of shafts that differ', () => {
    const of = (...names: string[]) =>
      kitProblems(
        order,
        shelf,
        names.map((name) => ({ part: partCalled(name).id })),
      )
    expect(of('Heron 200')).toEqual([{ code: 'too-few' }])
    expect(of('Heron 200', 'Heron 200')).toEqual([{ code: 'all-alike' }])
    expect(of('Heron 200', 'Clip 11')).toEqual([{ code: 'not-a-shaft', name: 'Clip 11' }])
    expect(kitProblems({ ...order, plan: { ...order.plan, lines: [] } }, shelf, [])).toEqual([
      { code: 'no-shaft-line' },
    ])
    const { c2cIn: _, ...uncut } = order.plan
    expect(kitProblems({ ...order, plan: uncut }, shelf, [])).toEqual([{ code: 'no-cut-length' }])
    expect(() => sendKit(order, shelf, [], '2026-04-01', ids)).toThrow('cannot be sent')
  })

  it('may be one shaft at two lengths, each arrow at its own', () => {
    const one = shaft('Heron 200', 815)
    const lengths = after(order, sendKit(order, shelf, [one, { ...one, c2cIn: 29 }], '2026-04-01', ids))
    expect(lengths.kits[0]!.arrows.map(({ c2cIn }) => c2cIn)).toEqual([28, 29])
    expect(kitProblems(order, shelf, [one, { ...one, c2cIn: 28 }])).toEqual([{ code: 'all-alike' }])
  })

  it('offers every shaft at the length of the set, and what was proposed at another beside it', () => {
    const { part, lot } = shaft('Heron 200', 815)
    const sample = { part, lot: lot!, name: 'Heron 200', c2cIn: 29, reserve: 1, sheet }
    const choices = kitChoices(order, shelf, [sample])
    const heron = choices.filter((each) => each.part === part)
    expect(heron.map(({ c2cIn }) => c2cIn)).toEqual([28, 29])
    expect(new Set(choices.map(({ key }) => key)).size).toBe(choices.length)
    const [atSet, longer] = heron.map(({ reserve: told }) => {
      const reserve = answer(told!)
      return typeof reserve === 'number' ? reserve : reserve.value
    })
    // A longer shaft has less reserve: Euler's column goes with the square of its length.
    expect(longer!).toBeLessThan(atSet!)
    expect(choices.some(({ part: each }) => shelf.parts.get(each)!.body.discontinued)).toBe(false)
  })

  it('tells how far each bare shaft hit, and which hit nearest', () => {
    expect(results.map(({ bareOffIn }) => bareOffIn)).toEqual([Math.SQRT1_2, 5, 10])
    expect(nearest(results)?.arrow.no).toBe(1)
  })

  it('names no nearest while fewer than two were shot, or at a tie', () => {
    expect(nearest(results.slice(0, 1))).toBeUndefined()
    expect(nearest([results[1]!, { ...results[1]! }])).toBeUndefined()
  })

  it('knows the reserve of each shaft, the stiffer the greater', () => {
    const reserves = results.map(({ reserve }) => {
      const value = answer(reserve!)
      return typeof value === 'number' ? value : value.value
    })
    expect(reserves[0]).toBeGreaterThan(reserves[1]!)
    expect(reserves[1]).toBeGreaterThan(reserves[2]!)
  })

  it('narrows the reserve the bow likes half way to the next shaft tried, open where none was', () => {
    const middle = likedReserve(results, kit.arrows[1]!.arrow)!
    const stiffest = likedReserve(results, kit.arrows[0]!.arrow)!
    expect(stiffest.max).toBeNull()
    expect(stiffest.min).toBe(middle.max)
    expect(middle.min).toBeLessThan(middle.max!)
    expect(likedReserve(results, testId(1))).toBeUndefined()
  })

  it('changes the spine that the sheet goes on with, and teaches the bow its speed', () => {
    expect(shaftOf(reported)).toBe('Heron 200')
    const decided = after(
      reported,
      decideKit(reported, shelf, reported.kits[0]!, kit.arrows[0]!.arrow, 'bare shaft nearest'),
    )
    expect(shaftOf(decided)).toBe('Heron 175')
    expect(decided.kits[0]!.decided).toMatchObject({ arrow: kit.arrows[0]!.arrow, reason: 'bare shaft nearest' })
    expect(valueOf(decided.answers, 'chronograph')).toContainEqual([836, 205.5])
    const [before, now] = [reported, decided].map((job) => sheetFigures(draftSheet(job, shelf, null))!.figures!)
    expect(answer(now!.columnReserve!)).not.toEqual(answer(before!.columnReserve!))
    // The other lines of the plan stay as they were.
    const others = (job: Job) => job.plan.lines.filter(({ part }) => shelf.parts.get(part)?.body.kind !== 'shaft')
    expect(others(decided)).toEqual(others(reported))
  })

  it('is not decided without a reason, nor on an arrow that was not in it', () => {
    expect(() => decideKit(reported, shelf, reported.kits[0]!, kit.arrows[0]!.arrow, ' ')).toThrow()
    expect(() => decideKit(reported, shelf, reported.kits[0]!, testId(1), 'so')).toThrow()
  })
})
