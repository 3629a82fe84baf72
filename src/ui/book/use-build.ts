/** The build of an address; undefined while it loads, null when the book has no such build. */
import { useEffect, useState } from 'react'
import { openBuild } from '../../state/open-build'
import type { OpenBuild } from '../../state/open-build'
import { useApp } from '../app/use-app'

export function useBuild(hash: string): OpenBuild | null | undefined {
  const repository = useApp((s) => s.repository)
  const [found, setFound] = useState<{ hash: string; build: OpenBuild | null }>()
  useEffect(() => {
    let gone = false
    if (repository !== null) {
      void openBuild(repository, hash).then((build) => {
        if (!gone) setFound({ hash, build })
      })
    }
    return () => {
      gone = true
    }
  }, [repository, hash])
  return found?.hash === hash ? found.build : undefined
}
