/** The sheet under the builder's hands: the saved plan with what is being typed laid over it, and all that follows. */
import { useCallback, useMemo, useState } from 'react'
import { cutFigures } from '../../domain/sheet/cut-figures'
import type { CutFigures } from '../../domain/sheet/cut-figures'
import { draftSheet } from '../../domain/sheet/draft-sheet'
import type { Plan } from '../../domain/sheet/plan'
import { planProblems } from '../../domain/sheet/plan-problems'
import type { PlanProblem } from '../../domain/sheet/plan-problem'
import type { Sheet } from '../../domain/sheet/sheet'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'

export interface OpenSheet {
  readonly sheet: Sheet
  readonly worked: SheetFigures | undefined
  readonly cut: CutFigures | undefined
  readonly problems: readonly PlanProblem[]
  /** As it was last frozen; undefined where it never was. */
  readonly frozen: FrozenSheet | undefined
  /** Lays a number that is being typed over the plan; undefined takes it off again. */
  readonly typing: (field: keyof Plan, value: number | undefined) => void
}

export interface FrozenSheet {
  readonly sheet: Sheet
  readonly worked: SheetFigures | undefined
  readonly cut: CutFigures | undefined
}

export function useSheet(open: OpenJob): OpenSheet {
  const shelf = useApp((s) => s.shelf)
  const [typed, setTyped] = useState<Partial<Plan>>({})
  const { job, clientFact } = open
  const sheet = useMemo(
    () => draftSheet({ ...job, plan: { ...job.plan, ...typed } }, shelf, clientFact),
    [job, typed, shelf, clientFact],
  )
  const worked = useMemo(() => sheetFigures(sheet), [sheet])
  const cut = useMemo(() => (worked === undefined ? undefined : cutFigures(sheet, worked)), [sheet, worked])
  const problems = useMemo(() => planProblems(sheet, worked, cut), [sheet, worked, cut])
  const typing = useCallback(
    (field: keyof Plan, value: number | undefined) =>
      setTyped((before) => {
        // "28." says no more than "28" did: nothing is worked out again.
        if (before[field] === value) return before
        const { [field]: _, ...rest } = before
        return value === undefined ? rest : { ...rest, [field]: value }
      }),
    [],
  )
  const last = open.sheets.get(job.frozen.at(-1)?.sheet ?? '')
  const frozen = useMemo((): FrozenSheet | undefined => {
    if (last === undefined) return undefined
    const was = sheetFigures(last)
    return { sheet: last, worked: was, cut: was === undefined ? undefined : cutFigures(last, was) }
  }, [last])
  return { sheet, worked, cut, problems, frozen, typing }
}
