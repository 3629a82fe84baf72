/** What changed between two versions; undefined while the arrows of an as-built are read. */
import { useEffect, useState } from 'react'
import type { VersionChange } from '../../domain/book/compared-versions'
import type { OpenBuild } from '../../state/open-build'
import { versionChanges } from '../../state/version-changes'
import { useApp } from '../app/use-app'

export type Version = OpenBuild['sheets'][number] | OpenBuild['versions'][number]

export function useVersionChanges(build: OpenBuild, from: Version, to: Version): readonly VersionChange[] | undefined {
  const repository = useApp((s) => s.repository)
  const [told, setTold] = useState<{ readonly of: string; readonly changes: readonly VersionChange[] }>()
  const of = `${from.hash} ${to.hash}`
  useEffect(() => {
    let isWanted = true
    if (repository !== null) {
      void versionChanges(repository, build.sheets, from, to).then((changes) => {
        if (isWanted) setTold({ of, changes })
      })
    }
    return () => {
      isWanted = false
    }
  }, [repository, build.sheets, from, to, of])
  return told?.of === of ? told.changes : undefined
}
