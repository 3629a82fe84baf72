/** Whether the page still stands at the address it was drawn at: a save that ends late must not carry its builder away. */
import { useEffect, useRef } from 'react'

/** @returns asked later, by what was begun at this drawing */
export function useStillHere(address: string): () => boolean {
  const now = useRef<string | null>(null)
  useEffect(() => {
    now.current = address
    return () => {
      now.current = null
    }
  }, [address])
  return () => now.current === address
}
