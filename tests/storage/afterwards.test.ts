import { afterEach, expect, it, vi } from 'vitest'
import { afterwards } from '@/storage/afterwards'

afterEach(() => {
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

function started() {
  vi.useFakeTimers()
  const page = new EventTarget()
  vi.stubGlobal('addEventListener', page.addEventListener.bind(page))
  const done: string[] = []
  const later = afterwards()
  for (const what of ['first', 'second']) later.soon(() => done.push(what))
  return { page, done, later }
}

it('does nothing while the page is at something else, then all of it in order, each once', () => {
  const { done, later } = started()
  expect(done).toEqual([])
  vi.runAllTimers()
  expect(done).toEqual(['first', 'second'])
  later.soon(() => done.push('third'))
  vi.runAllTimers()
  later.now()
  expect(done).toEqual(['first', 'second', 'third'])
})

it.each([
  ['when it is asked to', ({ later }: ReturnType<typeof started>) => later.now()],
  ['when the page is put away', ({ page }: ReturnType<typeof started>) => page.dispatchEvent(new Event('pagehide'))],
])('does all of it at once %s', (_, go) => {
  const all = started()
  go(all)
  expect(all.done).toEqual(['first', 'second'])
})
