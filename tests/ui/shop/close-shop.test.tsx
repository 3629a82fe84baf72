import '@tests/support/dialogs'
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, expect, it, vi } from 'vitest'
import { createStore } from 'zustand/vanilla'
import type { AppStore } from '@/state/app-store'
import type { NotSaved } from '@/state/unsaved'
import { AppProvider } from '@/ui/app/use-app'
import { CloseShop } from '@/ui/shop/close-shop'

afterEach(cleanup)

function shown(notSaved: NotSaved | null) {
  const leave = vi.fn()
  const store = createStore(() => ({
    book: 'shop',
    leave,
    notSaved,
    saveAgain: () => {
      store.setState({ notSaved: null })
      return Promise.resolve(true)
    },
  }))
  render(
    <AppProvider store={store as unknown as AppStore}>
      <CloseShop />
    </AppProvider>,
  )
  const press = (name: string) => userEvent.click(screen.getByRole('button', { name }))
  return { leave, press, store }
}

const WAITING: NotSaved = {
  kind: 'not saved',
  why: 'timeout',
  detail: '',
  commands: [{ id: '0193', by: 'Ada', at: '2026-11-25T14:02:00Z' }],
}

it('closes at once where nothing waits', async () => {
  const { leave, press } = shown(null)
  await press('Close my shop')
  expect(leave).toHaveBeenCalledOnce()
})

it('asks before it leaves behind what was not saved', async () => {
  const { leave, press } = shown(WAITING)
  await press('Close my shop')
  expect(screen.getByRole('dialog')).toBeTruthy()
  expect(leave).not.toHaveBeenCalled()
  await press('Close and lose it')
  expect(leave).toHaveBeenCalledOnce()
})

it('saves it first, and does not ask of itself the next time something waits', async () => {
  const { leave, press, store } = shown(WAITING)
  await press('Close my shop')
  await press('Save again')
  expect(screen.queryByRole('dialog')).toBeNull()
  store.setState({ notSaved: WAITING })
  expect(screen.queryByRole('dialog')).toBeNull()
  expect(leave).not.toHaveBeenCalled()
})
