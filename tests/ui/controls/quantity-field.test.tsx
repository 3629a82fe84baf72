import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { Units } from '@/ui/app/units'
import { QuantityField } from '@/ui/controls/quantity-field'

afterEach(cleanup)

const LENGTH = { unit: 'in', min: 18, max: 36, decimals: 2 } as const

/** The field over a record that keeps what it is given. */
function Kept({ start, clear = true, onCommit }: { start?: number; clear?: boolean; onCommit?: (n: number) => void }) {
  const [value, setValue] = useState(start)
  return (
    <>
      <QuantityField
        label="Draw length"
        asked={LENGTH}
        value={value}
        onCommit={(entry) => {
          onCommit?.(entry.value)
          setValue(entry.value)
        }}
        {...(clear ? { onClear: () => setValue(undefined) } : {})}
      />
      <output>{value ?? 'nothing'}</output>
    </>
  )
}

const field = () => screen.getByRole<HTMLInputElement>('textbox', { name: 'Draw length' })
const kept = () => screen.getByRole('status').textContent

describe('QuantityField', () => {
  it('is a text field with a decimal keyboard, described by its unit', () => {
    render(<Kept start={28.5} />)
    expect(field()).toHaveProperty('value', '28.5')
    expect(field().type).toBe('text')
    expect(field().inputMode).toBe('decimal')
    const described = field()
      .getAttribute('aria-describedby')!
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent)
    expect(described).toContain('inches')
  })

  it('commits once for Enter and leaving, and shows what is kept', async () => {
    const onCommit = vi.fn()
    render(<Kept onCommit={onCommit} />)
    await userEvent.type(field(), '723,9 mm{Enter}')
    await userEvent.tab()
    expect(onCommit.mock.calls).toEqual([[28.5]])
    expect(field().value).toBe('28.5')
  })

  it('shows what was typed in another unit two decimals finer than it is read, and keeps it whole', async () => {
    const onCommit = vi.fn()
    render(<Kept onCommit={onCommit} />)
    await userEvent.type(field(), '711 mm{Enter}')
    expect(onCommit.mock.calls[0]![0]).toBeCloseTo(711 / 25.4, 12)
    expect(field().value).toBe('27.9921')
    await userEvent.tab()
    expect(onCommit).toHaveBeenCalledTimes(1)
  })

  it('keeps a failed entry in place, says what is expected, and keeps nothing of it', async () => {
    const onCommit = vi.fn()
    render(<Kept start={28.5} onCommit={onCommit} />)
    await userEvent.clear(field())
    await userEvent.type(field(), '285')
    await userEvent.tab()
    expect(field().value).toBe('285')
    expect(field().getAttribute('aria-invalid')).toBe('true')
    expect(screen.getByText('Draw length: “285” is too large. Expected: 18 to 36 inches.')).toBeTruthy()
    expect(onCommit).not.toHaveBeenCalled()
    expect(kept()).toBe('28.5')
  })

  it('takes the complaint back as soon as the entry is right, before it is committed', async () => {
    render(<Kept />)
    await userEvent.type(field(), '2')
    await userEvent.tab()
    expect(field().getAttribute('aria-invalid')).toBe('true')
    await userEvent.type(field(), '8')
    expect(field().getAttribute('aria-invalid')).toBe('false')
    expect(kept()).toBe('nothing')
  })

  it('gives a refused entry on, and shows it again with the reason, until it is right', async () => {
    const onRefused = vi.fn()
    const onCommit = vi.fn()
    const shared = { label: 'Draw length', asked: LENGTH, value: 28.5, onRefused, onCommit }
    const { unmount } = render(<QuantityField {...shared} />)
    await userEvent.clear(field())
    await userEvent.type(field(), 'abc{Enter}')
    expect(onRefused.mock.calls.at(-1)).toEqual(['abc'])
    unmount()
    render(<QuantityField {...shared} refused="abc" />)
    expect(field().value).toBe('abc')
    expect(screen.getByText('Draw length: “abc” is not a number. Expected: 18 to 36 inches.')).toBeTruthy()
    await userEvent.clear(field())
    await userEvent.type(field(), '29{Enter}')
    expect(onCommit).toHaveBeenCalledOnce()
    await userEvent.clear(field())
    await userEvent.type(field(), '28.5{Enter}')
    expect(onRefused.mock.calls.at(-1)).toEqual([undefined])
  })

  it('complains no longer of what was erased again', async () => {
    render(<Kept />)
    await userEvent.type(field(), 'abc{Enter}')
    expect(field().getAttribute('aria-invalid')).toBe('true')
    await userEvent.clear(field())
    await userEvent.tab()
    expect(field().getAttribute('aria-invalid')).toBe('false')
    expect(screen.queryByText(/is not a number/)).toBeNull()
  })

  it('clears what is kept when it is emptied, or says that it may not be empty', async () => {
    const { unmount } = render(<Kept start={28.5} />)
    await userEvent.clear(field())
    await userEvent.tab()
    expect(kept()).toBe('nothing')
    unmount()
    render(<Kept start={28.5} clear={false} />)
    await userEvent.clear(field())
    await userEvent.tab()
    expect(screen.getByText(/^Draw length is empty/)).toBeTruthy()
    expect(kept()).toBe('28.5')
  })

  it('tells of each keystroke what it comes to', async () => {
    const onText = vi.fn()
    render(
      <QuantityField label="Draw length" asked={LENGTH} value={undefined} onText={onText} onCommit={() => undefined} />,
    )
    await userEvent.type(field(), '28')
    expect(onText.mock.calls.map(([entry]) => (entry.kind === 'number' ? entry.value : entry.problem.code))).toEqual([
      'out of bounds',
      28,
    ])
  })

  it('asks in millimetres in metric view and still keeps inches', async () => {
    const onCommit = vi.fn()
    render(
      <Units value="metric">
        <Kept start={28.5} onCommit={onCommit} />
      </Units>,
    )
    expect(field().value).toBe('723.9')
    await userEvent.clear(field())
    await userEvent.type(field(), '736.6{Enter}')
    expect(onCommit.mock.calls[0]![0]).toBeCloseTo(29, 12)
  })

  it('offers the way out of not knowing only while it is empty, and then says who owes it', async () => {
    const onSay = vi.fn()
    const unknown = { said: false, owed: 'by Friday', onSay }
    const { rerender } = render(
      <QuantityField
        label="Draw length"
        asked={LENGTH}
        value={undefined}
        unknown={unknown}
        onCommit={() => undefined}
      />,
    )
    await userEvent.click(screen.getByRole('button', { name: 'Don’t know yet' }))
    expect(onSay).toHaveBeenCalledOnce()
    rerender(
      <QuantityField
        label="Draw length"
        asked={LENGTH}
        value={undefined}
        unknown={{ ...unknown, said: true }}
        onCommit={() => undefined}
      />,
    )
    expect(screen.queryByRole('button')).toBeNull()
    expect(screen.getByText('by Friday')).toBeTruthy()
    expect(field().placeholder).toBe('don’t know yet')
  })
})
