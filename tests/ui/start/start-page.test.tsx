import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { createStore } from 'zustand'
import type { AppState } from '@/state/app-store'
import { AppProvider } from '@/ui/app/use-app'
import { StartPage } from '@/ui/start/start-page'

afterEach(cleanup)

describe('StartPage', () => {
  it('says what it does while the demo shop is filled, and fills it once', async () => {
    const started: string[] = []
    let filled = () => {}
    const start = (book: string) => {
      started.push(book)
      return new Promise<void>((done) => (filled = done))
    }
    const store = createStore(() => ({ start }) as unknown as AppState)
    render(
      <AppProvider store={store}>
        <StartPage />
      </AppProvider>,
    )
    const button = screen.getByRole('button', { name: 'Look around the demo shop' })
    await userEvent.click(button)
    await userEvent.click(button)
    expect(started).toEqual(['demo'])
    expect(screen.getByRole('status').textContent).toContain('takes some seconds')
    filled()
    await expect.poll(() => screen.getByRole('status').textContent).toBe('')
  })
})
