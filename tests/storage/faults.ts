/** Makes the k-th call to the simulated database fail: at once, or by ending its transaction. */
import { IDBDatabase, IDBIndex, IDBObjectStore } from 'fake-indexeddb'

export type Fault = 'throws' | 'aborts'

interface Armed {
  /** Calls since it was armed. */
  readonly calls: () => number
  readonly disarm: () => void
}

const WATCHED = [
  [
    IDBObjectStore.prototype,
    ['add', 'put', 'get', 'getAll', 'getAllKeys', 'delete', 'clear', 'count', 'openCursor', 'openKeyCursor'],
  ],
  [IDBIndex.prototype, ['get', 'getAll', 'getAllKeys', 'count', 'openCursor', 'openKeyCursor', 'getKey']],
  [IDBDatabase.prototype, ['transaction']],
] as const

type Method = (
  this: { transaction?: unknown; objectStore?: { transaction: IDBTransaction } },
  ...parameters: unknown[]
) => unknown

/**
 * @param k the call to fail, counted from 1; 0 only counts
 * @param forever fail every later call too
 */
export function arm(k: number, fault: Fault, forever: boolean): Armed {
  let calls = 0
  const undo: (() => void)[] = []
  for (const [prototype, names] of WATCHED) {
    const methods = prototype as unknown as Record<string, Method>
    for (const name of names) {
      const original = methods[name]!
      undo.push(() => (methods[name] = original))
      methods[name] = function (...parameters) {
        if (parameters[1] === 'versionchange') return original.apply(this, parameters) // the simulation's own, in opening
        calls += 1
        const hit = k > 0 && (forever ? calls >= k : calls === k)
        if (!hit) return original.apply(this, parameters)
        if (fault === 'throws' || name === 'transaction') throw new DOMException('planted', 'UnknownError')
        const request = original.apply(this, parameters)
        const transaction = (this.objectStore?.transaction ?? this.transaction) as IDBTransaction
        transaction.abort()
        return request
      }
    }
  }
  return { calls: () => calls, disarm: () => undo.forEach((each) => each()) }
}
