/** What a shop that has weighed nothing yet should weigh first: the parts whose scatter moves a finished weight the most. */
import type { Id } from '../records/scalars'
import { catalogueWeight } from './catalogue-weight'
import type { PartKind } from './part'
import type { Shelf } from './shelf'
import { isOffShelf } from './lots-of-part'

export interface ToWeigh {
  readonly lot: Id
  readonly part: Id
  readonly code: string
  readonly name: string
  readonly kind: PartKind
}

const FIRST = 4

/** @returns undefined for an empty shelf, and once anything was weighed */
export function firstToWeigh(
  shelf: Shelf,
): { readonly lots: readonly ToWeigh[]; readonly hasCheckWeight: boolean } | undefined {
  const isWeighed = [...shelf.lotViews.values()].some(({ weighed }) => weighed.length > 0)
  if (isWeighed || shelf.parts.size === 0) return undefined
  const lots = [...shelf.lots.values()].flatMap(({ id, body }) => {
    const part = shelf.parts.get(body.part)?.body
    if (part === undefined || part.kind === 'glue' || body.hold !== undefined || isOffShelf(shelf, id)) return []
    const { tolerance } = catalogueWeight(part, part.kind === 'shaft' ? part.rawLengthIn : 0)
    return [{ lot: id, part: body.part, code: body.code, name: part.name, kind: part.kind, tolerance }]
  })
  return {
    lots: lots
      .toSorted((a, b) => b.tolerance - a.tolerance)
      .slice(0, FIRST)
      .map(({ tolerance: _, ...rest }) => rest),
    hasCheckWeight: shelf.rules.scales.some(({ checkWeightGr }) => checkWeightGr !== undefined),
  }
}
