/** The figures of several sheets, worked out one a turn, so that the page answers in between. */
import { useEffect, useState } from 'react'
import type { Sheet } from '../../../domain/sheet/sheet'
import { sheetFigures } from '../../../domain/sheet/sheet-figures'
import type { SheetFigures } from '../../../domain/sheet/sheet-figures'

/** Null: the sheet has no figures, for want of a shaft or a cut length. */
type Worked = SheetFigures | null
const known = new WeakMap<Sheet, Worked>()

/** @returns for each sheet its figures; undefined while they are still to come */
export function useWorked(sheets: readonly Sheet[]): readonly (Worked | undefined)[] {
  const [, setTurn] = useState(0)
  const next = sheets.find((sheet) => !known.has(sheet))
  useEffect(() => {
    if (next === undefined) return undefined
    const turn = setTimeout(() => {
      known.set(next, sheetFigures(next) ?? null)
      setTurn((n) => n + 1)
    })
    return () => clearTimeout(turn)
  }, [next])
  return sheets.map((sheet) => known.get(sheet))
}
