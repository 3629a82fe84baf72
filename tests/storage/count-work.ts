/** Counts what is asked of the simulated database and how many rows it hands back. */
import { IDBIndex, IDBObjectStore } from 'fake-indexeddb'

const READS = ['get', 'getAll', 'openCursor', 'getAllKeys', 'openKeyCursor', 'count'] as const
const WRITES = ['add', 'put', 'delete'] as const

type Method = (this: unknown, ...parameters: unknown[]) => EventTarget & { result: unknown }

/** @returns calls; rows read, keys alone not counted; writes; and keys handed back, which comparing with `toEqual` leaves out */
export async function countWork(work: () => Promise<unknown>) {
  const counted = { calls: 0, rows: 0, writes: 0 }
  let keys = 0
  const undo: (() => void)[] = []
  for (const prototype of [IDBObjectStore.prototype, IDBIndex.prototype]) {
    const methods = prototype as unknown as Record<string, Method>
    for (const name of [...READS, ...WRITES]) {
      const original = methods[name]
      if (original === undefined) continue
      undo.push(() => (methods[name] = original))
      methods[name] = function (...parameters) {
        counted.calls += 1
        if ((WRITES as readonly string[]).includes(name)) counted.writes += 1
        const request = original.apply(this, parameters)
        if (name === 'get' || name === 'getAll' || name === 'openCursor') {
          request.addEventListener('success', () => {
            const { result } = request
            counted.rows += Array.isArray(result) ? result.length : result === undefined || result === null ? 0 : 1
          })
        }
        if (name === 'getAllKeys')
          request.addEventListener('success', () => (keys += (request.result as unknown[]).length))
        if (name === 'openKeyCursor')
          request.addEventListener('success', () => (keys += request.result === null ? 0 : 1))
        return request
      }
    }
  }
  try {
    await work()
  } finally {
    undo.forEach((each) => each())
  }
  return Object.defineProperty(counted, 'keys', { value: keys, enumerable: false }) as typeof counted & {
    readonly keys: number
  }
}
