/** The present moment, looked at again when something is due and when the page is seen again. */
import { useEffect, useState } from 'react'
import { useApp } from '../app/use-app'

const LONGEST_MS = 2_000_000_000 // what a browser can wait for at once

/** @param next when it is to be looked at again, ISO 8601; undefined: only when the page is seen again */
export function useNow(next: string | undefined): string {
  const now = useApp((s) => s.now)
  const [, again] = useState(0)
  useEffect(() => {
    const look = () => again((n) => n + 1)
    const wait =
      next === undefined ? undefined : Math.min(LONGEST_MS, Math.max(0, Date.parse(next) - Date.parse(now())))
    const timer = wait === undefined ? undefined : setTimeout(look, wait + 1)
    document.addEventListener('visibilitychange', look)
    return () => {
      clearTimeout(timer)
      document.removeEventListener('visibilitychange', look)
    }
  }, [next, now])
  return now()
}
