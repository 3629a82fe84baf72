/** The browser asks before it closes or reloads a page that holds what is nowhere else. */
import { useEffect } from 'react'

export function useUnloadGuard(isUnsaved: boolean): void {
  useEffect(() => {
    if (!isUnsaved) return
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    globalThis.addEventListener('beforeunload', ask)
    return () => globalThis.removeEventListener('beforeunload', ask)
  }, [isUnsaved])
}
