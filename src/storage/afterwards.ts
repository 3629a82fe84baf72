/** Work that nobody waits for, in the order it came: soon after what is at hand, at the latest when the page is put away. */
export interface Afterwards {
  soon(call: () => void): void
  /** All of it at once, before something that must find it done. */
  now(): void
}

export function afterwards(): Afterwards {
  let waiting: (() => void)[] = []
  const now = () => {
    const calls = waiting
    waiting = []
    calls.forEach((call) => call())
  }
  globalThis.addEventListener('pagehide', now)
  return {
    now,
    soon(call) {
      waiting.push(call)
      if (waiting.length === 1) setTimeout(now)
    },
  }
}
