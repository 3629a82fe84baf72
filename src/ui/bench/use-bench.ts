/** Everything one step of the bench stands on, worked out from the job's record. */
import { useMemo, useState } from 'react'
import type { Bench, BenchArrow } from '../../domain/bench/bench'
import { expectedAt } from '../../domain/bench/expected-at'
import type { DataPoint } from '../../domain/bench/data-points'
import { setLanding } from '../../domain/bench/set-forecast'
import type { SetLanding } from '../../domain/bench/set-forecast'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import type { Sheet } from '../../domain/sheet/sheet'
import type { Hash } from '../../domain/records/scalars'
import { withLearned } from '../../domain/stock/learned'
import { useApp } from '../app/use-app'

export interface BenchWork {
  readonly worked: SheetFigures
  readonly landing: SetLanding
  readonly expected: (point: DataPoint, arrow: BenchArrow) => ReturnType<typeof expectedAt>
}

export function useBenchWork(bench: Bench, sheet: Sheet): BenchWork | undefined {
  const lotViews = useApp((s) => s.shelf.lotViews)
  const today = useSame(
    useMemo(() => withLearned(sheet, lotViews), [sheet, lotViews]),
    bench.sheet,
  )
  const worked = useMemo(() => sheetFigures(today), [today])
  return useMemo(() => {
    if (worked === undefined) return undefined
    return {
      worked,
      landing: setLanding(bench, today, worked.items),
      expected: (point, arrow) => expectedAt(point, arrow, worked.items, today),
    }
  }, [worked, bench, today])
}

/** The very sheet of before while the shop has learned nothing new and the route is the same: most readings teach no lot anything. */
function useSame(sheet: Sheet, hash: Hash): Sheet {
  const of = `${hash} ${JSON.stringify([sheet.learned, sheet.route.map(({ key }) => key)])}`
  const [kept, keep] = useState({ sheet, of })
  if (kept.of === of) return kept.sheet
  keep({ sheet, of })
  return sheet
}
