import { cleanup, renderHook } from '@testing-library/react'
import { afterEach, expect, it } from 'vitest'
import { useUnloadGuard } from '@/ui/app/use-unload-guard'

afterEach(cleanup)

const isAsked = () => !globalThis.dispatchEvent(new Event('beforeunload', { cancelable: true }))

it('has the browser ask before the page goes while something is not saved, and not after', () => {
  const { rerender, unmount } = renderHook(useUnloadGuard, { initialProps: false })
  expect(isAsked()).toBe(false)
  rerender(true)
  expect(isAsked()).toBe(true)
  rerender(false)
  expect(isAsked()).toBe(false)
  rerender(true)
  unmount()
  expect(isAsked()).toBe(false)
})
