/** A rebuild beside the build it repeats: each figure then, now, the difference, and whether it matches. */
import { useMemo } from 'react'
import { builtWeightGr } from '../../domain/book/rebuild'
import { thenAndNow } from '../../domain/book/then-and-now'
import type { Sheet } from '../../domain/sheet/sheet'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import { ComparedTable } from '../book/compared-table'
import { useBuild } from '../book/use-build'
import { Panel } from '../controls/panel'

interface ThenAndNowProps {
  asBuilt: string
  sheet: Sheet
  worked: SheetFigures
}

export function ThenAndNow({ asBuilt, sheet, worked }: ThenAndNowProps) {
  const build = useBuild(asBuilt)
  const rows = useMemo(
    () => (build ? thenAndNow(build.sheet, builtWeightGr(build.arrows), sheet, worked) : []),
    [build, sheet, worked],
  )
  if (build === undefined || build === null) return null
  return (
    <Panel title="Then and now" quiet>
      <ComparedTable name="sheet" rows={rows} />
    </Panel>
  )
}
