import { describe, expect, it } from 'vitest'
import { inGrains } from '@/core/quantity'
import { accepted } from '@/domain/bench/bench'
import { bestHeads, interchange } from '@/domain/search/pairing/interchange'
import { headsOnArrows } from '@/domain/send/heads-on-arrows'
import { inspection } from '@/domain/send/inspection'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { freelyWords, interchangeWords } from '@/ui/words/interchange-words'
import { sentOrder } from '@tests/support/sent-order'

describe('the heads and the arrows of a finished set', () => {
  it('are as read: each arrow with its own head is the arrow that was weighed and balanced', async () => {
    const { job, sheet, shelf } = await sentOrder()
    const worked = sheetFigures(sheet)!
    const told = headsOnArrows(job.bench!, sheet, worked, shelf)!
    const inspected = inspection(job.bench!, sheet, worked).arrows
    expect(told.arrows).toHaveLength(inspected.length)
    for (const [i, { arrow, finished, foc }] of inspected.entries()) {
      const own = interchange([told.arrows[i]!], [told.ordered[i]!], told.targetGr).worst!
      expect(own.heaviest.gr).toBeCloseTo(inGrains(finished!), 9)
      expect(accepted(arrow, 'balancePoint')).toBeDefined()
      if (foc?.ok !== true) throw new Error('no FOC')
      expect(own.mostFoc.focPercent).toBeCloseTo(100 * foc.value.value, 9)
    }
  })

  it('count in every field point of the same thread, and a numbered head of a lot that is not on hold', async () => {
    const { job, sheet, shelf, lotOf, partCalled } = await sentOrder()
    const worked = sheetFigures(sheet)!
    const lot = lotOf(partCalled('Two-blade 250').id)!
    const standing = shelf.lots.get(lot)!
    const numbered = [{ no: '7', weightGr: 248.9 }]
    const withLot = (hold?: string) => ({
      ...shelf,
      lots: new Map([
        ...shelf.lots,
        [lot, { ...standing, body: { ...standing.body, numbered, ...(hold === undefined ? {} : { hold }) } }] as const,
      ]),
    })
    const free = headsOnArrows(job.bench!, sheet, worked, withLot())!
    expect(free.points.map(({ name }) => name)).toEqual([200, 225, 250, 300].map((gr) => `Field point ${gr}`))
    expect(free.ordered.map(({ name }) => name).at(-1)).toMatch(/^Two-blade 250, no. 7 of lot L-/)
    const held = headsOnArrows(job.bench!, sheet, worked, withLot('bent ferrules'))!
    expect(held.ordered).toHaveLength(free.ordered.length - 1)
    // With one more head to choose from, the best is no worse.
    const worst = (heads: typeof free.ordered) =>
      Math.max(...bestHeads(free.arrows, heads, free.targetGr).best!.map(({ gr }) => Math.abs(gr - free.targetGr)))
    expect(worst(free.ordered)).toBeLessThanOrEqual(worst(held.ordered))
    const point = interchange(free.arrows, [free.points[0]!], free.targetGr).worst!
    expect(freelyWords(point, free.targetGr, 0.5)).toMatch(/^light by (4|5)\d\.\d gr at the worst$/)
    expect(freelyWords(point, point.furthest.gr, 0.5)).toMatch(/^any on any; at most 0\.0 gr/)
  })

  it('are none before an arrow is finished', async () => {
    const { job, sheet, shelf } = await sentOrder()
    const bench = { ...job.bench!, arrows: job.bench!.arrows.map((arrow) => ({ ...arrow, readings: [] })) }
    expect(headsOnArrows(bench, sheet, sheetFigures(sheet)!, shelf)).toBeUndefined()
    for (const finding of [
      { code: 'no-arrows' },
      { code: 'no-heads' },
      { code: 'not-usable', id: 'x' },
      { code: 'fewer-heads-than-arrows', heads: 2, arrows: 3 },
    ] as const)
      expect(interchangeWords(finding)).toMatch(/\.$/)
  })
})
