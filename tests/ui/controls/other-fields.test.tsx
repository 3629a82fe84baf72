import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { ChoiceField } from '@/ui/controls/choice-field'
import { DayField } from '@/ui/controls/day-field'
import type { Pair } from '@/ui/controls/pair-field'
import { PairField } from '@/ui/controls/pair-field'
import { TextField } from '@/ui/controls/text-field'

afterEach(cleanup)

describe('ChoiceField', () => {
  it('is a radio group with nothing chosen until someone chooses', async () => {
    const onChoose = vi.fn()
    render(
      <ChoiceField
        label="Loosed with"
        choices={[
          { value: 'release aid', label: 'Release aid' },
          { value: 'fingers', label: 'Fingers' },
        ]}
        value={undefined}
        onChoose={onChoose}
      />,
    )
    expect(screen.getByRole('group', { name: 'Loosed with' })).toBeTruthy()
    expect(screen.getAllByRole<HTMLInputElement>('radio').map((radio) => radio.checked)).toEqual([false, false])
    await userEvent.click(screen.getByRole('radio', { name: 'Fingers' }))
    expect(onChoose).toHaveBeenCalledWith('fingers')
  })
})

describe('DayField', () => {
  it('reads a typed day back in full and keeps it once', async () => {
    const onCommit = vi.fn()
    render(<DayField label="Travels on" value={undefined} today="2026-11-25" onCommit={onCommit} />)
    await userEvent.type(screen.getByRole('textbox', { name: 'Travels on' }), '14 jan')
    expect(screen.getByText('Thursday 14 January 2027')).toBeTruthy()
    await userEvent.keyboard('{Enter}')
    await userEvent.tab()
    expect(onCommit.mock.calls).toEqual([['2027-01-14']])
  })

  it('asks which of two days is meant, with the entry kept', async () => {
    const onCommit = vi.fn()
    render(<DayField label="Travels on" value={undefined} today="2026-11-25" onCommit={onCommit} />)
    await userEvent.type(screen.getByRole('textbox'), '3/4/27{Enter}')
    expect(screen.getByText(/could be Saturday 3 April 2027 or Thursday 4 March 2027/)).toBeTruthy()
    expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe('3/4/27')
    expect(onCommit).not.toHaveBeenCalled()
  })

  it('complains no longer of what was erased again', async () => {
    render(<DayField label="Travels on" value={undefined} today="2026-11-25" onCommit={() => undefined} />)
    await userEvent.type(screen.getByRole('textbox'), 'spring{Enter}')
    expect(screen.getByText(/“spring” is not a day/)).toBeTruthy()
    await userEvent.clear(screen.getByRole('textbox'))
    await userEvent.tab()
    expect(screen.queryByText(/is not a day/)).toBeNull()
    expect(screen.getByRole('textbox').getAttribute('aria-invalid')).toBe('false')
  })
})

describe('TextField', () => {
  it('gives hostile text on as the text it is, once', async () => {
    const onCommit = vi.fn()
    render(<TextField label="Notes" value="" onCommit={onCommit} />)
    await userEvent.click(screen.getByRole('textbox', { name: 'Notes' }))
    await userEvent.paste('=<img src=x onerror=alert(1)> ')
    await userEvent.keyboard('{Enter}')
    await userEvent.tab()
    expect(onCommit.mock.calls).toEqual([['=<img src=x onerror=alert(1)>']])
  })
})

describe('PairField', () => {
  function Chronograph({ onCommit }: { onCommit: (pairs: readonly Pair[]) => void }) {
    const [pairs, setPairs] = useState<readonly Pair[]>([[452, 268]])
    return (
      <PairField
        label="Chronograph readings"
        name="chronograph"
        columns={[
          { label: 'Arrow', asked: { unit: 'gr', min: 150, max: 1500, decimals: 0 } },
          { label: 'Speed', asked: { unit: 'ft/s', min: 80, max: 450, decimals: 1 } },
        ]}
        value={pairs}
        onCommit={(next) => {
          onCommit(next)
          setPairs(next)
        }}
      />
    )
  }
  const cell = (name: string) => screen.getByRole<HTMLInputElement>('textbox', { name })

  it('has an empty row ready and keeps a row when both halves are there', async () => {
    const onCommit = vi.fn()
    render(<Chronograph onCommit={onCommit} />)
    await userEvent.type(cell('Arrow 2, gr'), '601')
    await userEvent.tab()
    expect(onCommit).not.toHaveBeenCalled()
    await userEvent.type(cell('Speed 2, ft/s'), '236,5')
    await userEvent.tab()
    expect(onCommit.mock.lastCall).toEqual([
      [
        [452, 268],
        [601, 236.5],
      ],
    ])
    expect(cell('Arrow 3, gr').value).toBe('')
  })

  it('drops a row that was emptied', async () => {
    const onCommit = vi.fn()
    render(<Chronograph onCommit={onCommit} />)
    await userEvent.clear(cell('Arrow 1, gr'))
    await userEvent.clear(cell('Speed 1, ft/s'))
    await userEvent.tab()
    expect(onCommit.mock.lastCall).toEqual([[]])
  })

  it('says which half is wrong and keeps nothing', async () => {
    const onCommit = vi.fn()
    render(<Chronograph onCommit={onCommit} />)
    await userEvent.type(cell('Arrow 2, gr'), '601')
    await userEvent.type(cell('Speed 2, ft/s'), '2365{Enter}')
    expect(screen.getByText('Speed: “2365” is too large. Expected: 80 to 450 feet per second.')).toBeTruthy()
    expect(cell('Speed 2, ft/s').value).toBe('2365')
    expect(onCommit).not.toHaveBeenCalled()
  })
})
