import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dragDecay } from '@/core/flight/drag-decay'
import { DRAG_BAND, PUBLISHED_DRAG, dragBetween } from '@/core/flight/drag-band'
import { grains, kilogramsPerCubicMetre, millimetres, ratio } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const arrow = (gr: number, mm: number, density: number, drag: number) => ({
  mass: grains(gr),
  diameter: millimetres(mm),
  density: kilogramsPerCubicMetre(density),
  drag: ratio(drag),
})

describe('dragDecay', () => {
  // [MECHANICS] k = ρC_dA/2m, computed twice by hand.
  it('is 8.78068e-4 /m for 650 gr, 6.2 mm, C_d 2.0 in standard air', () => {
    expect(Math.abs(answer(dragDecay(arrow(650, 6.2, 1.225, 2))) - 8.78068e-4)).toBeLessThanOrEqual(0.5e-9)
  })

  it('grows with density, drag and the square of the diameter, and falls with weight', () => {
    const number = fc.double({ min: 0.5, max: 1.9, noNaN: true })
    fc.assert(
      fc.property(number, number, (x, y) => {
        const here = answer(dragDecay(arrow(500 * x, 6 * y, 1, 2)))
        return (
          Math.abs(here / answer(dragDecay(arrow(500, 6, 1, 2))) / (y ** 2 / x) - 1) < 1e-12 &&
          Math.abs(answer(dragDecay(arrow(500 * x, 6 * y, x, 2 * y))) / here / (x * y) - 1) < 1e-12
        )
      }),
    )
  })

  it('is nothing in vacuum', () => {
    expect(answer(dragDecay(arrow(650, 6.2, 0, 2)))).toBe(0)
    expect(answer(dragDecay(arrow(650, 6.2, 1.225, 0)))).toBe(0)
  })

  it.each([
    { of: arrow(0, 6.2, 1.225, 2), input: 'arrow weight' },
    { of: arrow(650, 0.99, 1.225, 2), input: 'shaft diameter' },
    { of: arrow(650, 30.1, 1.225, 2), input: 'shaft diameter' },
    { of: arrow(650, 6.2, -0.1, 2), input: 'air density' },
    { of: arrow(650, 6.2, 2.01, 2), input: 'air density' },
    { of: arrow(650, 6.2, 1.225, -0.1), input: 'drag coefficient' },
    { of: arrow(650, 6.2, 1.225, 10.1), input: 'drag coefficient' },
    { of: arrow(650, 6.2, Number.NaN, 2), input: 'air density' },
  ])('names the $input when it is outside the model', ({ of, input }) => {
    expect(dragDecay(of)).toMatchObject({ ok: false, findings: [{ code: 'outside-model', input }] })
  })
})

describe('the drag band', () => {
  // [MIYAZAKI20] 1.3 to 2.6; [TN1297] 4.6 for the standard error of a band with nothing else known.
  it('is 2.0 to 2.6 where nothing is measured, inside what is published', () => {
    expect(DRAG_BAND).toMatchObject({ low: 2, high: 2.6 })
    expect(DRAG_BAND.value).toBeCloseTo(2.3, 12)
    expect(DRAG_BAND.sd).toBeCloseTo(0.3 / Math.sqrt(3), 12)
    expect(PUBLISHED_DRAG).toEqual({ min: 1.3, max: 2.6 })
    expect(dragBetween(ratio(1), ratio(1)).sd).toBe(0)
  })
})
