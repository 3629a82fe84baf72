import { describe, expect, it } from 'vitest'
import { inGrains, inInches } from '@/core/quantity'
import { DEMO_PARTS } from '@/demo/demo-parts'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { answer } from '@tests/support/answer'
import { demoSheet } from '@tests/support/demo-sheet'

describe('sheetFigures', () => {
  const sheet = demoSheet({ targetGr: 785, c2cIn: 28 })
  const figures = sheetFigures(sheet)!

  it('lands the finished arrow on the target once it is trimmed', () => {
    // Definition: forecast − trim = target; the arrow that the other figures stand on is the trimmed one.
    expect(figures.trimPlan?.ok).toBe(true)
    expect(inGrains(answer(figures.figures!.finished))).toBeCloseTo(785, 6)
  })

  it('weighs before trim what its parts and joints are expected to weigh', () => {
    const total = figures.items.reduce((sum, { item }) => sum + inGrains(item.mean), 0)
    expect(inGrains(answer(figures.forecast).total.value)).toBeCloseTo(total, 9)
    expect(total).toBeGreaterThan(785)
  })

  it('seats the head ahead of the shoulder and ends the arrow length at the shaft front', () => {
    const insert = DEMO_PARTS.find((part) => part.name === 'Long post 158')
    const { shaftFrontIn, seatIn, tipIn } = figures.geometry
    expect(shaftFrontIn).toBeCloseTo(0.55 + 28, 12)
    expect(seatIn - shaftFrontIn).toBeCloseTo(insert?.kind === 'insert' ? insert.shoulderIn : NaN, 12)
    expect(tipIn).toBeGreaterThan(seatIn)
    const lifted = answer(figures.lifted)
    expect(inInches(lifted.arrow.length)).toBeCloseTo(shaftFrontIn, 12)
  })
})
