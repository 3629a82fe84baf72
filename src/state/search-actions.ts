/** What comes of a search: one arrow found becomes the plan, in one command, true once it is on the disk. */
import type { FoundArrow } from '../domain/search/found-arrow'
import { planChange } from '../domain/search/plan-with'
import { newEvent } from '../domain/records/write'
import type { EventDraft } from '../domain/records/write'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppState } from './app-store'

/** What was asked beside the parts, and becomes the plan's with them. */
export interface AskedOfPlan {
  readonly targetGr: number
  readonly quantity: number
}

export function takeFound(
  { write, shelf }: Pick<AppState, 'write' | 'shelf'>,
  { job, plan }: Sheet,
  found: FoundArrow,
  asked: AskedOfPlan,
): Promise<boolean> {
  return write((_, ids) => {
    const { c2cIn, set, removed } = planChange(
      plan,
      (id) => shelf.parts.get(id)?.body,
      found,
      () => ids.id(),
    )
    const about = { job }
    const quantity = asked.quantity - plan.spares
    const events: readonly EventDraft[] = [
      ...(plan.targetGr === asked.targetGr
        ? []
        : [newEvent('planSet', about, { field: 'targetGr', value: asked.targetGr })]),
      ...(plan.quantity === quantity || quantity < 1
        ? []
        : [newEvent('planSet', about, { field: 'quantity', value: quantity })]),
      newEvent('planSet', about, { field: 'c2cIn', value: c2cIn }),
      ...removed.map((line) => newEvent('lineRemoved', about, { line })),
      ...set.map((line) => newEvent('lineSet', about, { line })),
    ]
    return { events }
  })
}
