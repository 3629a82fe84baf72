/** One search at a time for this page: its progress, how it ended, and a way to stop it. */
import { useEffect, useRef, useState } from 'react'
import type { SearchProgress } from '../../../domain/search/find-parts'
import type { RunningSearch, SearchEnd } from '../../../domain/search/searcher'
import type { SearchProblem } from '../../../domain/search/wishes'
import { useAppStore } from '../../app/use-app'

export type FindState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'searching'; readonly progress: SearchProgress | undefined }
  | { readonly kind: 'ended'; readonly end: SearchEnd }

export function useFind() {
  const store = useAppStore()
  const [state, setState] = useState<FindState>({ kind: 'idle' })
  const newest = useRef(0)
  const running = useRef<RunningSearch>(undefined)
  useEffect(
    () => () => {
      newest.current += 1
      running.current?.stop()
    },
    [],
  )
  async function find(problem: SearchProblem) {
    newest.current += 1
    const own = newest.current
    const isNewest = () => own === newest.current
    setState({ kind: 'searching', progress: undefined })
    const searcher = await store.getState().searcher()
    if (!isNewest()) return
    running.current = searcher.find(problem, (progress) => {
      if (isNewest()) setState({ kind: 'searching', progress })
    })
    const end = await running.current.end
    if (isNewest()) setState({ kind: 'ended', end })
  }
  function stop() {
    newest.current += 1
    running.current?.stop()
    setState({ kind: 'ended', end: { kind: 'stopped' } })
  }
  return { state, find, stop }
}
