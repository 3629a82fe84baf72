import { inGrains, inPercent } from '@/core/quantity'
import type { FoundArrow } from '@/domain/search/found-arrow'
import { planChange, planWith } from '@/domain/search/plan-with'
import type { Sheet } from '@/domain/sheet/sheet'
import { type SheetFigures, sheetFigures } from '@/domain/sheet/sheet-figures'
import { learnedOf } from '@/domain/stock/learned'
import type { Shelf } from '@/domain/stock/shelf'
import { answer } from '@tests/support/answer'
import { testId } from '@tests/support/test-id'

/** The sheet with the arrow found on it, parts, lots and weighings copied in as a draft has them. */
export function sheetWith(sheet: Sheet, shelf: Shelf, found: FoundArrow): Sheet {
  let next = 50_000
  const partOf = (id: string) => shelf.parts.get(id)?.body
  const plan = planWith(
    sheet.plan,
    planChange(sheet.plan, partOf, found, () => testId(next++)),
  )
  const lots = plan.lines.flatMap(({ lot }) => (lot === null ? [] : [lot]))
  return {
    ...sheet,
    plan,
    parts: plan.lines.map(({ part }) => ({ id: part, part: partOf(part)! })),
    lots: lots.map((lot) => ({ id: lot, lot: shelf.lots.get(lot)!.body })),
    learned: lots.flatMap((lot) => learnedOf(lot, shelf.lotViews.get(lot))),
  }
}

/** What the sheet page says of it, by the sheet's own models. */
export function wholeArrow(sheet: Sheet) {
  const worked = sheetFigures(sheet)!
  const figures = worked.figures!
  return {
    beforeGr: inGrains(answer(worked.forecast).total.value),
    ownSdGr: inGrains(answer(worked.forecast).ownSd),
    sharedSdGr: inGrains(answer(worked.forecast).sharedSd),
    postGivesGr: inGrains(worked.landing!.trimmable),
    chance: answer(worked.chanceAll!).joint as number,
    finishedGr: inGrains(answer(figures.finished)),
    focPercent: inPercent(answer(figures.foc)),
    reserve: reserveIn(figures.columnReserve),
    worked,
  }
}

function reserveIn(outcome: NonNullable<SheetFigures['figures']>['columnReserve']): number | undefined {
  if (outcome === undefined) return undefined
  const value = answer(outcome)
  return typeof value === 'number' ? value : value.value
}
