import { cleanup, render, screen } from '@testing-library/react'
import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { grains, ratio } from '@/core/quantity'
import { DotPlot } from '@/ui/figures/charts/dot-plot'
import { LineChart } from '@/ui/figures/charts/line-chart'
import { stacked } from '@/ui/figures/charts/stacked'
import { tickTexts } from '@/ui/figures/charts/tick-text'
import { unmarkedDigits } from '@tests/support/unmarked-digits'

afterEach(cleanup)

describe('DotPlot', () => {
  it('says its sentence and lists every value it draws', () => {
    render(
      <DotPlot
        name="set"
        label="Finished weight"
        sentence="Six within 0.3 gr."
        unit="gr"
        decimals={1}
        dots={[825, 825.1].map((n, at) => ({ key: `${at + 1}`, label: `no. ${at + 1}`, value: grains(n) }))}
      />,
    )
    expect(screen.getByText('Six within 0.3 gr.')).toBeTruthy()
    expect(document.querySelectorAll('circle')).toHaveLength(2)
    expect([...document.querySelectorAll('[data-read]')].map((mark) => mark.textContent)).toEqual(['825.0', '825.1'])
    expect(unmarkedDigits(document.body)).toEqual([])
  })

  it('stands one value, many alike, and none', () => {
    for (const values of [[825], [825, 825, 825], []]) {
      const { unmount, container } = render(
        <DotPlot
          name="s"
          label="W"
          sentence="s"
          unit="gr"
          decimals={1}
          dots={values.map((n, at) => ({ key: `${at}`, label: '', value: grains(n) }))}
        />,
      )
      expect(container.innerHTML).not.toMatch(/NaN|Infinity/)
      unmount()
    }
  })
})

describe('LineChart', () => {
  const series = (key: string, ys: readonly number[]) => ({
    key,
    label: key,
    points: ys.map((y, at) => ({ x: grains(300 + at * 100), y: ratio(y), low: ratio(y - 0.1), high: ratio(y + 0.1) })),
  })
  const chart = (...all: ReturnType<typeof series>[]) => (
    <LineChart
      name="w"
      sentence="The reserve falls."
      x={{ label: 'Front', unit: 'gr', decimals: 0 }}
      y={{ label: 'Reserve', unit: '1', decimals: 2 }}
      series={all}
      wash={{ low: ratio(0.75), high: ratio(1.3) }}
      at={grains(400)}
    />
  )

  it('has a table of what its lines show', () => {
    render(chart(series('short', [1.2, 1, 0.8]), series('long', [1.1, 0.9, 0.7])))
    expect(screen.getAllByRole('row', { hidden: true }).map((row) => row.textContent)).toEqual([
      'Front, grshortlong',
      '3001.201.10',
      '4001.000.90',
      '5000.800.70',
    ])
    expect(document.querySelector('[data-figure="w.long.2"]')!.textContent).toBe('0.70')
    expect(unmarkedDigits(document.body)).toEqual([])
  })

  it('stands a single point and none', () => {
    const { rerender, container } = render(chart(series('short', [1])))
    expect(container.innerHTML).not.toMatch(/NaN|Infinity/)
    rerender(chart())
    expect(container.textContent).toBe('The reserve falls.')
  })
})

describe('stacked', () => {
  it('lets no two dots of a level touch, and leaves out no level', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 40 }), (xs) => {
        const levels = stacked(xs, 2.4)
        xs.forEach((x, i) =>
          xs
            .slice(0, i)
            .forEach((other, j) => expect(levels[i] === levels[j] && Math.abs(x - other) < 2.4).toBe(false)),
        )
        expect(new Set(levels).size).toBe(xs.length === 0 ? 0 : Math.max(...levels) + 1)
      }),
    )
  })
})

describe('tickTexts', () => {
  it('gives each tick the decimals its step needs', () => {
    expect(tickTexts([0.4, 0.6, 0.8])).toEqual(['0.4', '0.6', '0.8'])
    expect(tickTexts([300, 400])).toEqual(['300', '400'])
    expect(tickTexts([824.25, 824.5])).toEqual(['824.25', '824.50'])
  })
})
