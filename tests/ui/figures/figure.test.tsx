import '@tests/support/dialogs'
// Loaded beforehand: the page fetches it only when it is asked for, which a busy machine may be slow at.
import '@/ui/figures/working/working-dialog'
import { cleanup, render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { outsideModel } from '@/core/finding'
import type { Estimate } from '@/core/outcome'
import { bounds, known, noAnswer, term } from '@/core/outcome'
import { feetPerSecond, grains } from '@/core/quantity'
import type { Speed } from '@/core/quantity'
import { Units } from '@/ui/app/units'
import { Figure, FigureList } from '@/ui/figures/figure'
import { Read } from '@/ui/figures/read'
import { unmarkedDigits } from '@tests/support/unmarked-digits'

afterEach(cleanup)

const WORKING = {
  equation: 'v = √(2E / (m + mᵥ))',
  inputs: [term('arrow mass', grains(825), 'gr', 'read', 'lot T-31')],
  result: [term('speed', feetPerSecond(204.8123), 'ft/s', 'computed')],
  source: ['SP811'],
} as const
const estimate = (low: number, value: number, high: number): Estimate<Speed> => ({
  value: feetPerSecond(value),
  sd: feetPerSecond(1),
  low: feetPerSecond(low),
  high: feetPerSecond(high),
})
const marked = (name: string) => document.querySelector<HTMLElement>(`[data-figure="${name}"]`)

describe('Figure', () => {
  it('marks its value with its name, its full number and the unit shown', () => {
    render(
      <FigureList>
        <Figure
          name="sheet.speed"
          label="Speed"
          of={known(feetPerSecond(204.8123), WORKING)}
          unit="ft/s"
          decimals={1}
        />
      </FigureList>,
    )
    expect(marked('sheet.speed')!.textContent).toBe('204.8')
    expect(Number(marked('sheet.speed')!.dataset['value'])).toBeCloseTo(204.8123, 10)
    expect(marked('sheet.speed')!.dataset['unit']).toBe('ft/s')
    expect(screen.getByRole('definition').textContent).toBe('204.8 ft/s')
  })

  it('marks an even band by its half width and an uneven one by its ends', () => {
    const speed = (of: Estimate<Speed>) => (
      <FigureList>
        <Figure name="s" label="Speed" of={known(of, WORKING)} unit="ft/s" decimals={1} />
      </FigureList>
    )
    const { rerender } = render(speed(estimate(202.7, 204.8, 206.9)))
    expect(marked('s.band')!.textContent).toBe('2.1')
    rerender(speed(estimate(201, 204.8, 206.9)))
    expect(marked('s.band')).toBeNull()
    expect([marked('s.low')!.textContent, marked('s.high')!.textContent]).toEqual(['201.0', '206.9'])
  })

  it('shows a range by both its ends', () => {
    render(
      <FigureList>
        <Figure name="w" label="Weight" of={known(bounds(grains(780), grains(900)), WORKING)} unit="gr" decimals={0} />
      </FigureList>,
    )
    expect([marked('w.low')!.textContent, marked('w.high')!.textContent]).toEqual(['780', '900'])
  })

  it('switches to metric with the number in the unit shown', () => {
    render(
      <Units value="metric">
        <FigureList>
          <Figure name="s" label="Speed" of={known(feetPerSecond(204.8123), WORKING)} unit="ft/s" decimals={1} />
        </FigureList>
      </Units>,
    )
    expect(marked('s')!.textContent).toBe('62.4')
    expect(marked('s')!.dataset['unit']).toBe('m/s')
    expect(Number(marked('s')!.dataset['value'])).toBeCloseTo(204.8123 * 0.3048, 10) // 1 ft = 0.3048 m [SP811]
  })

  it('says what is missing instead of a number, or why the core gives none', async () => {
    const { rerender } = render(
      <FigureList>
        <Figure name="s" label="Speed" of={undefined} unit="ft/s" decimals={1} missing="needs the draw weight" />
      </FigureList>,
    )
    expect(marked('s')).toBeNull()
    expect(screen.getByText('needs the draw weight')).toBeTruthy()
    const finding = outsideModel('arrow mass', grains(5), bounds(grains(100), grains(2000)), 'gr')
    rerender(
      <FigureList>
        <Figure<'speed'> name="s" label="Speed" of={noAnswer(finding)} unit="ft/s" decimals={1} />
      </FigureList>,
    )
    expect(marked('s')).toBeNull()
    expect(await screen.findByText(/The arrow mass is 5; this can be worked out for 100 to 2000 grains/)).toBeTruthy()
  })

  it('opens its working with both units, the origin in words and the source in full', async () => {
    render(
      <FigureList>
        <Figure name="s" label="Speed" of={known(feetPerSecond(204.8123), WORKING)} unit="ft/s" decimals={1} />
      </FigureList>,
    )
    const user = userEvent.setup()
    await user.click(screen.getByRole('button', { name: 'Speed' }))
    const dialog = await screen.findByRole('dialog', { name: 'Speed' })
    const mass = await within(dialog).findByRole('row', { name: /^arrow mass/ })
    expect(mass.textContent).toBe('arrow mass825 gr53.4591 gread, lot T-31')
    expect(within(dialog).getByRole('row', { name: /^speed/ }).textContent).toBe('speed204.812 ft/s62.4268 m/sresult')
    expect(within(dialog).getByText(/NIST Special Publication 811/)).toBeTruthy()
    expect(dialog.querySelector('[data-working="s"] [data-term="speed"]')).toBeTruthy()
    await user.click(within(dialog).getByRole('button', { name: 'Copy as text' }))
    expect(await navigator.clipboard.readText()).toMatch(
      /^Speed\nv = .*\n {2}arrow mass: 825 gr = 53\.4591 g \(read, lot T-31\)\n/,
    )
    await user.click(within(dialog).getByRole('button', { name: 'Close' }))
    expect(screen.queryByRole('dialog')).toBeNull()
  })

  it('leaves no digit unmarked, working and finding included', async () => {
    const finding = outsideModel('arrow mass', grains(5), bounds(grains(100), grains(2000)), 'gr')
    render(
      <FigureList>
        <Figure
          name="s"
          label="Speed at 25 yd"
          of={known(estimate(202.7, 204.8, 206.9), { ...WORKING, steps: [WORKING] }, [finding])}
          unit="ft/s"
          decimals={1}
        />
      </FigureList>,
    )
    await userEvent.click(screen.getByRole('button', { name: 'Speed at 25 yd' }))
    await screen.findByRole('dialog')
    expect(unmarkedDigits(document.body)).toEqual([])
  })
})

describe('Read', () => {
  it('marks a reading, keeps a withdrawn one struck through, and follows the units', () => {
    render(
      <Units value="metric">
        <Read name="arrow.3.cutWeight" value={347.2} unit="gr" decimals={1} withdrawn />
      </Units>,
    )
    const mark = document.querySelector<HTMLElement>('[data-read="arrow.3.cutWeight"]')!
    expect(mark.closest('s')).toBeTruthy()
    expect(mark.textContent).toBe('22.50')
    expect(Number(mark.dataset['value'])).toBeCloseTo(347.2 * 0.06479891, 10) // 1 gr = 64.79891 mg [SP811]
  })
})
