import { cleanup, render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import fc from 'fast-check'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { anchorOf } from '@/ui/figures/elevation/anchor-of'
import { Elevation } from '@/ui/figures/elevation/elevation'
import type { ElevationPiece } from '@/ui/figures/elevation/elevation-piece'
import { rowsByPosition } from '@/ui/figures/elevation/rows-by-position'
import { trueScale } from '@/ui/figures/elevation/true-scale'
import { unmarkedDigits } from '@tests/support/unmarked-digits'

afterEach(cleanup)

const piece = (
  id: string,
  shape: 'shaft' | 'tube' | 'film' | 'nock',
  fromIn: number,
  toIn: number,
  hidden = false,
): ElevationPiece => ({
  id,
  label: id,
  outline: { shape },
  fromIn,
  toIn,
  halfWidthMm: 3.1,
  hidden,
})
const ARROW = [
  piece('head', 'tube', 28.5, 30.5),
  piece('insert', 'tube', 26.5, 28.5, true),
  piece('shaft', 'shaft', 0.5, 28.5),
  piece('wrap', 'film', 0.5, 4.5),
  piece('nock', 'nock', 0, 0.5),
]

describe('trueScale', () => {
  it('draws front and rear at one scale, and the front above the rear', () => {
    const scale = trueScale(ARROW, 600)!
    const inch = (from: number) => scale.y(from) - scale.y(from + 1)
    expect(inch(28)).toBeCloseTo(scale.pxPerMm * 25.4, 9) // 1 in = 25.4 mm [SP811]
    expect(inch(1)).toBeCloseTo(scale.pxPerMm * 25.4, 9)
    expect(scale.gap).toEqual({ fromIn: 5.2, toIn: 25.8 })
    expect(scale.y(30.5)).toBeGreaterThan(0)
    expect(scale.y(0)).toBeLessThan(600)
  })

  it('does not break a shaft that has no plain stretch worth it', () => {
    expect(trueScale([piece('shaft', 'shaft', 0, 10), piece('sleeve', 'tube', 2, 8)], 400)!.gap).toBeNull()
  })

  it('gives nothing without a shaft or a height', () => {
    expect(trueScale([piece('nock', 'nock', 0, 0.5)], 400)).toBeUndefined()
    expect(trueScale(ARROW, Number.NaN)).toBeUndefined()
  })
})

describe('the leaders', () => {
  it('never cross: rows stand in the order of what they hold, front first', () => {
    const part = fc
      .tuple(fc.double({ min: 0.5, max: 28, noNaN: true }), fc.double({ min: 0.1, max: 4, noNaN: true }))
      .map(([from, length]) => [from, Math.min(28.5, from + length)] as const)
    fc.assert(
      fc.property(
        fc.array(part, { maxLength: 8 }),
        fc.double({ min: 300, max: 1200, noNaN: true }),
        (parts, height) => {
          const pieces = [
            piece('shaft', 'shaft', 0.5, 28.5),
            ...parts.map(([from, to], at) => piece(`p${at}`, 'tube', from, to)),
          ]
          const rows = rowsByPosition([...pieces.map(({ id }) => ({ id })), { id: 'glue' }], pieces)
          const scale = trueScale(pieces, height)!
          const heights = rows.flatMap(
            ({ id }) =>
              anchorOf(
                pieces.filter((p) => p.id === id),
                scale,
              )?.y ?? [],
          )
          expect(rows.at(-1)!.id).toBe('glue')
          // Two ways to reckon one height may differ in the last bits: a hair of a pixel is no crossing.
          const crossed = heights.filter((y, i) => i > 0 && y < heights[i - 1]! - 1e-6)
          expect(crossed).toEqual([])
        },
      ),
    )
  })
})

describe('Elevation', () => {
  const rows = ['nock', 'glue', 'head', 'shaft', 'insert'].map((id) => ({ id, label: id, content: `about ${id}` }))

  it('lists the lines by position, says which is chosen, and lets another be chosen from line and drawing', async () => {
    const onChoose = vi.fn()
    const { container } = render(<Elevation name="e" pieces={ARROW} rows={rows} chosen="insert" onChoose={onChoose} />)
    const buttons = within(screen.getByRole('list')).getAllByRole('button')
    expect(buttons.map((button) => button.textContent)).toEqual(['head', 'insert', 'shaft', 'nock', 'glue'])
    expect(buttons.map((button) => button.getAttribute('aria-pressed'))).toEqual([
      'false',
      'true',
      'false',
      'false',
      'false',
    ])
    await userEvent.click(buttons[0]!)
    await userEvent.click(container.querySelector('svg path')!)
    expect(onChoose.mock.calls).toEqual([['head'], ['shaft']])
  })

  it('puts a line in another place by Alt and an arrow key, and never beyond the ends', async () => {
    const onMove = vi.fn()
    render(<Elevation name="e" pieces={ARROW} rows={rows} chosen={null} onChoose={() => undefined} onMove={onMove} />)
    const shown = ['head', 'insert', 'shaft', 'nock', 'glue']
    screen.getByRole('button', { name: 'insert' }).focus()
    await userEvent.keyboard('{Alt>}{ArrowDown}{ArrowUp}{/Alt}{ArrowDown}')
    screen.getByRole('button', { name: 'head' }).focus()
    await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}')
    expect(onMove.mock.calls).toEqual([
      [shown, 'insert', 2],
      [shown, 'insert', 0],
    ])
  })

  it('keeps the builder’s own order of lines', () => {
    render(<Elevation name="e" pieces={ARROW} rows={rows} chosen={null} onChoose={() => undefined} byHand />)
    const buttons = within(screen.getByRole('list')).getAllByRole('button')
    expect(buttons.map((button) => button.textContent)).toEqual(rows.map(({ label }) => label))
  })

  it('says in words and marked numbers what it draws', () => {
    render(<Elevation name="e" pieces={ARROW} rows={rows} chosen={null} onChoose={() => undefined} />)
    const positions = screen.getAllByRole('row', { hidden: true }).map((row) => row.textContent)
    expect(positions).toContain('insert, hidden26.50 in28.50 in')
    expect(document.querySelectorAll('[data-figure^="e."]')).toHaveLength(2 * ARROW.length)
    expect(unmarkedDigits(document.body)).toEqual([])
  })

  it('says what is missing when there is no shaft yet', () => {
    render(<Elevation name="e" pieces={[]} rows={[]} chosen={null} onChoose={() => undefined} />)
    expect(screen.getByText(/No shaft and no cut length yet/)).toBeTruthy()
  })
})
