import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fewestCovering } from '@/domain/search/fewest-covering'
import { KIT_REACH, testKit } from '@/domain/search/test-kit'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'
import { seeded } from '@tests/support/seeded'
import { demoShelf } from './demo-shelf'

const shelf = demoShelf({ roll: seeded(1) })
const kitOf = (...asked: Parameters<typeof demoSheet>) => testKit(demoSheet(...asked), shelf)
const sent = (kit: ReturnType<typeof testKit>) => {
  if (typeof kit === 'string') throw new Error(kit)
  return kit
}

describe('a test kit', () => {
  it('brackets the stiffness called for with two or three arrows off the demo shelf', () => {
    const { samples, open, called } = sent(kitOf({ targetGr: 815, c2cIn: 28.5 }))
    expect(called).toEqual({ min: 0.75, max: 1.3 })
    expect(open).toEqual([])
    expect(samples.length).toBeGreaterThanOrEqual(2)
    expect(samples.length).toBeLessThanOrEqual(3)
    const reserves = samples.map(({ reserve }) => reserve)
    expect(reserves).toEqual(reserves.toSorted((a, b) => a - b))
    expect(reserves[0]! / KIT_REACH).toBeLessThanOrEqual(0.75)
    expect(reserves.at(-1)! * KIT_REACH).toBeGreaterThanOrEqual(1.3)
    for (const { reserve } of samples) expect(reserve >= 0.75 && reserve <= 1.3).toBe(true)
  })

  it('says of each arrow what the sheet with that shaft says', () => {
    for (const { sheet, reserve, part, c2cIn } of sent(kitOf({ targetGr: 815, c2cIn: 28.5 })).samples) {
      expect(sheet.plan.c2cIn).toBe(c2cIn)
      expect(sheet.plan.lines.some((line) => line.part === part)).toBe(true)
      const own = sheetFigures(sheet)!.figures!.columnReserve!
      expect(own.ok && (typeof own.value === 'number' ? own.value : own.value.value)).toBe(reserve)
    }
  })

  it('sends no shaft beyond its maker’s limits, and none that the insert does not fit', () => {
    const { samples } = sent(kitOf({ targetGr: 815, c2cIn: 28.5 }, undefined, { peakDrawWeightLb: 84 }))
    for (const { sheet } of samples) {
      const shaft = sheet.parts.map(({ part }) => part).find((part) => part.kind === 'shaft')
      expect(shaft?.kind === 'shaft' && (shaft.maxDrawWeightLb ?? Infinity)).toBeGreaterThanOrEqual(84)
      expect(shaft?.kind === 'shaft' && shaft.innerDiameterMm).toBe(5.28)
    }
  })

  it('names the stretch of stiffness that the shelf has nothing for', () => {
    const one = demoShelf({ roll: seeded(1), keep: ({ kind, name }) => kind !== 'shaft' || name === 'Heron 200' })
    const kit = testKit(demoSheet({ targetGr: 815, c2cIn: 28.5 }), one)
    expect(sent(kit).open.length).toBeGreaterThan(0)
  })

  it('says what is missing before it can be worked out', () => {
    expect(kitOf({ targetGr: 815 })).toBe('no cut length')
    expect(kitOf({ c2cIn: 28 }, USUAL_LINES.slice(1))).toBe('no shaft in the plan')
    const { peakDrawWeightLb: _, ...bow } = demoSheet({ c2cIn: 28 }).bow
    expect(testKit({ ...demoSheet({ c2cIn: 28 }), bow }, shelf)).toBe('no draw weight')
    const bare = demoShelf({ roll: seeded(1), keep: ({ kind }) => kind !== 'shaft' })
    expect(testKit(demoSheet({ targetGr: 815, c2cIn: 28 }), bare)).toBe('nothing on the shelf fits')
  })
})

const STEPS = 400 // of the window, looked at one by one
const STEP = 0.55 / STEPS

describe('fewestCovering', () => {
  const points = fc.array(fc.double({ min: 0.5, max: 2, noNaN: true }), { maxLength: 8 })

  it('takes no more points than any choice that covers as much', () => {
    fc.assert(
      fc.property(points, (all) => {
        const window = { min: 0.75, max: 1.3 }
        const { chosen, open } = fewestCovering(all, window, 1.15)
        const uncovered = (of: readonly number[]) =>
          Array.from({ length: STEPS }, (_, i) => 0.75 + (i + 0.5) * STEP).filter(
            (at) => !of.some((p) => p / 1.15 <= at && at <= p * 1.15),
          ).length
        const own = uncovered(chosen.map((i) => all[i]!))
        expect(own).toBe(uncovered(all))
        const openWidth = open.reduce((sum, { min, max }) => sum + max - min, 0)
        expect(Math.abs(openWidth - own * STEP)).toBeLessThan(STEP * (open.length + 1))
        for (let mask = 0; mask < 2 ** all.length; mask++) {
          const some = all.filter((_, i) => (mask >> i) & 1)
          if (uncovered(some) === own) expect(chosen.length).toBeLessThanOrEqual(some.length)
        }
      }),
      { numRuns: 60 },
    )
  })
})
