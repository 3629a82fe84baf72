/** Work that nobody waits for, in the order it came: soon after what is at hand, at the latest when the page is put away. */
export interface Afterwards {
  /** At once in a page that nobody sees: its timers are slow, or may never run. */
  soon(call: () => void): void
  /** All of it at once, before something that must find it done. */
  now(): void
  /** For good: what waits is done, and what comes later is done at once. */
  end(): void
}

/** @param page stands in for the document, in tests */
export function afterwards(page: Pick<Document, 'visibilityState' | keyof EventTarget> = document): Afterwards {
  let waiting: (() => void)[] = []
  let isEnded = false
  const now = () => {
    // One that fails keeps none of the others from being done.
    for (let call = waiting.shift(); call !== undefined; call = waiting.shift()) {
      try {
        call()
      } catch (error) {
        reportError(error)
      }
    }
  }
  const whenHidden = () => {
    if (page.visibilityState === 'hidden') now()
  }
  page.addEventListener('visibilitychange', whenHidden)
  globalThis.addEventListener('pagehide', now)
  return {
    now,
    soon(call) {
      waiting.push(call)
      if (isEnded || page.visibilityState === 'hidden') now()
      else if (waiting.length === 1) setTimeout(now)
    },
    end() {
      now()
      isEnded = true
      page.removeEventListener('visibilitychange', whenHidden)
      globalThis.removeEventListener('pagehide', now)
    },
  }
}
