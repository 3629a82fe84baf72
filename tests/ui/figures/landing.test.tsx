import { cleanup, render, screen } from '@testing-library/react'
import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { grains } from '@/core/quantity'
import { Landing } from '@/ui/figures/landing/landing'
import type { LandingRow } from '@/ui/figures/landing/landing'
import { standingOf } from '@/ui/figures/landing/landing-words'
import { unmarkedDigits } from '@tests/support/unmarked-digits'

afterEach(cleanup)

const forecast = (key: string, value: number, half: number): LandingRow => ({
  key,
  label: `no. ${key}`,
  weight: {
    kind: 'forecast',
    value: { value: grains(value), sd: grains(half / 2), low: grains(value - half), high: grains(value + half) },
  },
})
const read = (key: string, value: number): LandingRow => ({
  key,
  label: `no. ${key}`,
  weight: { kind: 'read', value: grains(value) },
})
const show = (rows: readonly LandingRow[]) =>
  render(<Landing name="l" rows={rows} target={grains(825)} tolerance={grains(0.5)} />)
const lines = () => screen.getAllByRole('listitem').map((item) => item.textContent)

describe('Landing', () => {
  it('says of each arrow what it weighs or heads to, and how far off', () => {
    show([
      read('1', 825.04),
      forecast('2', 828.6, 0.5),
      forecast('3', 823.9, 0.5),
      read('4', 825.54),
      read('5', 825.56),
    ])
    expect(lines()).toEqual([
      'no. 1825.0on the number',
      'no. 2heads to 828.6heavy by 3.6',
      'no. 3heads to 823.9light by 1.1',
      'no. 4825.5on the number',
      'no. 5825.6heavy by 0.6',
    ])
  })

  it('draws light left of the target and heavy right of it, always', () => {
    const off = fc.oneof(
      fc.double({ min: 0.01, max: 700, noNaN: true }),
      fc.double({ min: -500, max: -0.01, noNaN: true }),
    )
    fc.assert(
      fc.property(off, (by) => {
        const { container, unmount } = show([read('1', 825 + by)])
        const x = (selector: string, name: string) =>
          Number.parseFloat(container.querySelector(selector)!.getAttribute(name)!)
        const [point, target] = [x('circle', 'cx'), x('svg > line', 'x1')]
        unmount()
        expect(point >= 0 && point <= 100).toBe(true)
        expect(by < 0 ? point < target : point > target).toBe(true)
      }),
      { numRuns: 50 },
    )
  })

  it('marks each of its numbers', () => {
    show([read('1', 825), forecast('2', 828.6, 0.5)])
    expect(document.querySelector('[data-figure="l.2"]')!.textContent).toBe('828.6')
    expect(document.querySelector('[data-figure="l.2.off"]')!.textContent).toBe('3.6')
    expect(unmarkedDigits(document.body)).toEqual([])
  })

  it('stands an empty set', () => {
    show([])
    expect(screen.getByRole('list').children).toHaveLength(0)
  })
})

describe('standingOf', () => {
  it('is on the number inside the tolerance, its edge and its rounding included', () => {
    const kind = (weight: number) => standingOf(grains(weight), grains(825), grains(0.5)).kind
    expect([824.44, 824.46, 825, 825.54, 825.56].map(kind)).toEqual([
      'light',
      'on the number',
      'on the number',
      'on the number',
      'heavy',
    ])
  })
})
