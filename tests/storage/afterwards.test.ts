import { afterEach, expect, it, vi } from 'vitest'
import { afterwards } from '@/storage/afterwards'

afterEach(() => {
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

function started() {
  vi.useFakeTimers()
  const window = new EventTarget()
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window))
  vi.stubGlobal('removeEventListener', window.removeEventListener.bind(window))
  const reported = vi.fn()
  vi.stubGlobal('reportError', reported)
  const page = Object.assign(new EventTarget(), { visibilityState: 'visible' as DocumentVisibilityState })
  const done: string[] = []
  const later = afterwards(page as unknown as Document)
  const ask = (what: string) => later.soon(() => done.push(what))
  ask('first')
  ask('second')
  const hide = () => {
    page.visibilityState = 'hidden'
    page.dispatchEvent(new Event('visibilitychange'))
  }
  return { window, hide, done, later, ask, reported }
}

it('does nothing while the page is at something else, then all of it in order, each once', () => {
  const { done, later, ask } = started()
  expect(done).toEqual([])
  vi.runAllTimers()
  expect(done).toEqual(['first', 'second'])
  ask('third')
  vi.runAllTimers()
  later.now()
  expect(done).toEqual(['first', 'second', 'third'])
})

it.each([
  ['when it is asked to', ({ later }: ReturnType<typeof started>) => later.now()],
  [
    'when the page is put away',
    ({ window }: ReturnType<typeof started>) => window.dispatchEvent(new Event('pagehide')),
  ],
  ['when the page is hidden', ({ hide }: ReturnType<typeof started>) => hide()],
  ['when it ends', ({ later }: ReturnType<typeof started>) => later.end()],
])('does all of it at once %s', (_, go) => {
  const all = started()
  go(all)
  expect(all.done).toEqual(['first', 'second'])
})

it('waits for no timer in a page that nobody sees, nor after its end', () => {
  const { hide, done, later, ask, window } = started()
  hide()
  ask('third')
  later.end()
  ask('fourth')
  window.dispatchEvent(new Event('pagehide'))
  expect(done).toEqual(['first', 'second', 'third', 'fourth'])
})

it('goes on after one that fails, and reports it', () => {
  const { done, later, ask, reported } = started()
  later.soon(() => {
    throw new Error('the channel is closed')
  })
  ask('third')
  vi.runAllTimers()
  expect(done).toEqual(['first', 'second', 'third'])
  expect(reported).toHaveBeenCalledOnce()
})
