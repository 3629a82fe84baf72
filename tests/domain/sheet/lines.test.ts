import { describe, expect, it } from 'vitest'
import type { JobEvent } from '@/domain/job/events'
import { chained, NO_EVENT } from '@/domain/records/event'
import { newEvent } from '@/domain/records/write'
import { linePlaces } from '@/domain/sheet/line-places'
import { linesSince } from '@/domain/sheet/lines-since'
import { movedLine } from '@/domain/sheet/moved-line'
import { planAfter } from '@/domain/sheet/plan-after'
import type { PlanEvent } from '@/domain/sheet/plan-after'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { countedIds } from '@tests/storage/fresh-shop'
import { demoSheet } from '@tests/support/demo-sheet'
import { testId } from '@tests/support/test-id'

const sheet = demoSheet({ c2cIn: 28.5, targetGr: 800 })
const order = sheet.plan.lines.map(({ id }) => id)

const ordered = (lines: readonly string[]): PlanEvent => {
  const ids = countedIds(70)
  const draft = newEvent('linesOrdered', { job: sheet.job }, { lines: [...lines] })
  const head = { log: ids.id(), seq: 0, hash: NO_EVENT }
  const made = chained(head, { id: ids.id(), by: 'Ansa', at: '2026-11-23T10:00:00Z', events: [draft] })
  return (made as readonly JobEvent[])[0] as PlanEvent
}

describe('the order of the lines', () => {
  it('is the builder’s own once it was set, and that of position again when it is taken back', () => {
    const turned = order.toReversed()
    const byHand = planAfter(sheet.plan, ordered(turned))
    expect(byHand.order).toBe('by hand')
    expect(byHand.lines.map(({ id }) => id)).toEqual(turned)
    expect(planAfter(byHand, ordered([]))).not.toHaveProperty('order')
  })

  it('changes no figure but that of weights stacked one behind the other', () => {
    const turned = { ...sheet, plan: planAfter(sheet.plan, ordered(order.toReversed())) }
    const [was, is] = [sheetFigures(sheet)!, sheetFigures(turned)!]
    expect(is.figures?.foc).toEqual(was.figures?.foc)
    expect(linePlaces(is.geometry)).toEqual(linePlaces(was.geometry))
  })

  it('moves one line to any place, and to the end for a place beyond it', () => {
    expect(movedLine(['a', 'b', 'c'], 'c', 0)).toEqual(['c', 'a', 'b'])
    expect(movedLine(['a', 'b', 'c'], 'a', 1)).toEqual(['b', 'a', 'c'])
    expect(movedLine(['a', 'b', 'c'], 'a', 9)).toEqual(['b', 'c', 'a'])
    expect(movedLine(['a', 'b', 'c'], 'a', -1)).toEqual(['a', 'b', 'c'])
    expect(movedLine(['a', 'b'], 'x', 1)).toEqual(['a', 'b'])
  })
})

describe('linesSince', () => {
  const [first, ...others] = sheet.plan.lines
  const lines = [{ ...others[0]!, count: 2 }, ...others.slice(1), { ...first!, id: testId(2000) }]
  const now = { ...sheet, plan: { ...sheet.plan, lines } }

  it('names what a changed line was, which lines are new and which are gone', () => {
    const { changed, removed } = linesSince(sheet, now)
    expect([...changed]).toEqual([
      [others[0]!.id, { name: 'Long post 158', count: 1, lotCode: undefined }],
      [testId(2000), null],
    ])
    expect(removed).toEqual([{ name: 'Heron 200', count: 1, lotCode: undefined }])
  })

  it('says nothing of a sheet that is as it was, in whatever order', () => {
    const turned = { ...sheet, plan: { ...sheet.plan, lines: sheet.plan.lines.toReversed() } }
    expect(linesSince(sheet, turned)).toEqual({ changed: new Map(), removed: [] })
  })
})

describe('linePlaces', () => {
  it('gives each line from its rearmost piece to its foremost, and none to glue', () => {
    const { geometry } = sheetFigures(sheet)!
    const places = linePlaces(geometry)
    for (const { line, part } of geometry.placed) {
      const place = places.get(line.id)!
      const own = geometry.placed.filter((each) => each.line.id === line.id)
      expect(place.fromIn, part.name).toBe(Math.min(...own.map(({ fromIn }) => fromIn)))
      expect(place.toIn, part.name).toBe(Math.max(...own.map(({ toIn }) => toIn)))
    }
    const glue = sheet.parts.filter(({ part }) => part.kind === 'glue').map(({ id }) => id)
    const lines = sheet.plan.lines.filter(({ part }) => glue.includes(part))
    expect(lines).toHaveLength(2)
    for (const { id } of lines) expect(places.has(id)).toBe(false)
  })
})
