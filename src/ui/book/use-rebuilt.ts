/** Today's way to a past build, worked out again whenever what is asked, or the shelf, has changed. */
import { useEffect, useMemo, useState } from 'react'
import type { RebuildAsked, Rebuilt } from '../../domain/book/rebuild-today'
import { workOutRebuild } from '../../state/book-actions'
import { useApp } from '../app/use-app'

export function useRebuilt({ past, builtGr, quantity }: RebuildAsked) {
  const shelf = useApp((s) => s.shelf)
  const searcher = useApp((s) => s.searcher)
  const [told, setTold] = useState<{ readonly of: Promise<Rebuilt>; readonly rebuilt: Rebuilt }>()
  const whenKnown = useMemo(
    () => workOutRebuild({ shelf, searcher }, { past, builtGr, quantity }),
    [shelf, searcher, past, builtGr, quantity],
  )
  useEffect(() => {
    let isWanted = true
    void whenKnown.then((rebuilt) => {
      if (isWanted) setTold({ of: whenKnown, rebuilt })
    })
    return () => {
      isWanted = false
    }
  }, [whenKnown])
  return { known: told?.of === whenKnown ? told.rebuilt : undefined, whenKnown }
}
