import { act, cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, expect, it } from 'vitest'
import { SPEEDS } from '@/domain/call/asked-numbers'
import { ChoiceField } from '@/ui/controls/choice-field'
import type { Pair } from '@/ui/controls/pair-field'
import { PairField } from '@/ui/controls/pair-field'
import { QuantityField } from '@/ui/controls/quantity-field'
import { TextField } from '@/ui/controls/text-field'

afterEach(cleanup)

/** A page that keeps what it is given only when the disk says so. */
const underWay: (() => void)[] = []
const arrive = () => underWay.shift()?.()
function SlowPage() {
  const [kept, setKept] = useState<readonly Pair[]>([])
  return (
    <PairField
      label="Chronograph readings"
      name="chronograph"
      columns={[
        { label: 'Arrow', asked: SPEEDS.first },
        { label: 'Speed', asked: SPEEDS.second },
      ]}
      value={kept}
      onCommit={(pairs) => {
        underWay.push(() => setKept(pairs))
      }}
    />
  )
}

it('loses nothing that is typed while the reading before is still on its way to the disk', async () => {
  render(<SlowPage />)
  const field = (name: string) => screen.getByRole<HTMLInputElement>('textbox', { name })
  await userEvent.type(field('Arrow 1, gr'), '452')
  await userEvent.type(field('Speed 1, ft/s'), '268{Enter}')
  await userEvent.type(field('Arrow 2, gr'), '601')
  expect(field('Speed 1, ft/s').value).toBe('268')
  act(() => arrive())
  expect(field('Arrow 2, gr').value).toBe('601')
  await userEvent.type(field('Speed 2, ft/s'), '236.5{Enter}')
  act(() => arrive())
  expect(['Arrow 1, gr', 'Speed 1, ft/s', 'Arrow 2, gr', 'Speed 2, ft/s'].map((name) => field(name).value)).toEqual([
    '452',
    '268',
    '601',
    '236.5',
  ])
})

it('keeps the focus in the empty row while two lists arrive one after the other', async () => {
  render(<SlowPage />)
  const field = (name: string) => screen.getByRole<HTMLInputElement>('textbox', { name })
  await userEvent.type(field('Arrow 1, gr'), '452')
  await userEvent.type(field('Speed 1, ft/s'), '268{Enter}')
  await userEvent.type(field('Arrow 2, gr'), '601')
  await userEvent.type(field('Speed 2, ft/s'), '236.5{Enter}')
  field('Arrow 3, gr').focus()
  act(() => arrive())
  expect(document.activeElement).toBe(field('Arrow 3, gr'))
  expect(field('Speed 2, ft/s').value).toBe('236.5')
  act(() => arrive())
  expect(document.activeElement).toBe(field('Arrow 3, gr'))
})

it('keeps a digit that is typed while the digits before it are on their way', async () => {
  const given: number[] = []
  function Page() {
    const [kept, setKept] = useState<number>()
    return (
      <>
        <QuantityField
          label="Finished weight"
          asked={{ unit: 'gr', min: 10, max: 1500, decimals: 0 }}
          value={kept}
          onCommit={({ value }) => given.push(value)}
        />
        <button type="button" onClick={() => setKept(65)}>
          it arrives
        </button>
      </>
    )
  }
  render(<Page />)
  const field = screen.getByRole<HTMLInputElement>('textbox', { name: 'Finished weight' })
  await userEvent.type(field, '650')
  act(() => screen.getByText('it arrives').click())
  expect(field.value).toBe('650')
  await userEvent.type(field, '{Enter}')
  expect(given).toEqual([650])
})

it('shows a choice at once, and what is kept as soon as that changes, also back to what it was', async () => {
  const chosen: string[] = []
  const SIDES = [
    { value: 'left', label: 'left' },
    { value: 'right', label: 'right' },
  ]
  const field = (value: string) => (
    <ChoiceField label="Fletch" choices={SIDES} value={value} onChoose={(side) => chosen.push(side)} />
  )
  const isOn = (name: string) => screen.getByRole<HTMLInputElement>('radio', { name }).checked
  const { rerender } = render(field('right'))
  await userEvent.click(screen.getByRole('radio', { name: 'left' }))
  expect([chosen, isOn('left')]).toEqual([['left'], true])
  rerender(field('left'))
  expect(isOn('left')).toBe(true)
  rerender(field('right'))
  expect([isOn('left'), isOn('right')]).toEqual([false, true])
})

it('shows what is kept of a text as soon as that changes, also back to what it was', async () => {
  const field = (value: string) => <TextField label="Name" value={value} onCommit={() => {}} />
  const shown = () => screen.getByRole<HTMLInputElement>('textbox', { name: 'Name' }).value
  const { rerender } = render(field('Ada'))
  await userEvent.clear(screen.getByRole('textbox', { name: 'Name' }))
  await userEvent.type(screen.getByRole('textbox', { name: 'Name' }), 'Ida{Enter}')
  expect(shown()).toBe('Ida')
  rerender(field('Ida'))
  rerender(field('Ada'))
  expect(shown()).toBe('Ada')
})
