import { cleanup, renderHook } from '@testing-library/react'
import { afterEach, expect, it } from 'vitest'
import { useStillHere } from '@/ui/app/use-still-here'

afterEach(cleanup)

it('knows what was begun at this address from what was begun at another, and from a page that is gone', () => {
  const { result, rerender, unmount } = renderHook(useStillHere, { initialProps: '/bench/weigh/1' })
  const begun = result.current
  expect(begun()).toBe(true)
  rerender('/bench/cut/1')
  expect(begun()).toBe(false)
  expect(result.current()).toBe(true)
  rerender('/bench/weigh/1')
  expect(begun(), 'come back to it').toBe(true)
  unmount()
  expect(begun()).toBe(false)
})
