/** The sheet as it would be with an arrow that was found, so that the sheet's own models tell its figures. */
import type { Plan } from '../sheet/plan'
import type { Sheet } from '../sheet/sheet'
import { stoodOn } from '../sheet/stood-on'
import type { Shelf } from '../stock/shelf'
import type { FoundArrow } from './found-arrow'
import { planChange, planWith } from './plan-with'

/** @param asked what the search was asked beside the parts, laid over the plan: target, number of arrows */
export function foundSheet(sheet: Sheet, shelf: Shelf, found: FoundArrow, asked: Partial<Plan> = {}): Sheet {
  let added = 0
  const partOf = (id: string) => shelf.parts.get(id)?.body
  const change = planChange(sheet.plan, partOf, found, () => `found-${(added += 1)}`)
  const plan = { ...planWith(sheet.plan, change), ...asked }
  return { ...sheet, plan, ...stoodOn(plan, shelf) }
}
