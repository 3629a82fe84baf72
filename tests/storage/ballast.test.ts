import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { ballast } from '@/storage/ballast'

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }))
afterEach(() => void vi.useRealTimers())

/** A folder in memory whose writing can be held. */
function heldFolder(room = Infinity) {
  const files = new Map<string, number>()
  let go = () => {}
  let written = Promise.resolve()
  const folder = {
    getFileHandle: (name: string) =>
      Promise.resolve({
        getFile: () => Promise.resolve({ size: files.get(name) ?? 0 }),
        createWritable: async () => {
          let size = 0
          await written
          return {
            write: (bytes: Uint8Array) => {
              size += bytes.length
              return size > room ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : Promise.resolve()
            },
            close: () => Promise.resolve(void files.set(name, size)),
          }
        },
      }),
    removeEntry: (name: string) => (files.delete(name) ? Promise.resolve() : Promise.reject(new Error('not there'))),
  }
  return {
    files,
    hold: () => (written = new Promise((done) => (go = done))),
    go: () => go(),
    of: () => Promise.resolve(folder as unknown as FileSystemDirectoryHandle),
  }
}
const SIXTEEN = 16 * 1024 * 1024

it('is laid some seconds later, once, and not again where it lies', async () => {
  const folder = heldFolder()
  const weight = ballast('shop', folder.of)
  weight.layLater()
  weight.layLater()
  await vi.advanceTimersByTimeAsync(2000)
  expect(folder.files.size).toBe(0)
  await vi.advanceTimersByTimeAsync(2000)
  await weight.lay()
  expect([...folder.files]).toEqual([['shop.ballast', SIXTEEN]])
})

it('is not laid into a rescue that began before its time', async () => {
  const folder = heldFolder()
  const weight = ballast('shop', folder.of)
  weight.layLater()
  await vi.advanceTimersByTimeAsync(1000)
  await weight.drop()
  await vi.advanceTimersByTimeAsync(10_000)
  expect(folder.files.size).toBe(0)
})

it('is dropped also while it is being laid', async () => {
  const folder = heldFolder()
  const weight = ballast('shop', folder.of)
  void folder.hold()
  const laying = weight.lay()
  const dropped = weight.drop()
  folder.go()
  await Promise.all([laying, dropped])
  expect(folder.files.size).toBe(0)
})

it('tells whether there is room, and leaves nothing of having tried', async () => {
  const folder = heldFolder(SIXTEEN)
  const weight = ballast('shop', folder.of)
  expect(await weight.hasRoom(SIXTEEN)).toBe(true)
  expect(await weight.hasRoom(SIXTEEN + 1)).toBe(false)
  expect(await ballast('shop', () => Promise.reject(new Error('withheld'))).hasRoom(1)).toBe(false)
  expect(folder.files.size).toBe(0)
})
