/**
 * What a shop has to mend a light arrow with: another part of the same make-up in place of one on the arrow, or a part
 * more. What would not go together is left out; and heads, because the set is trimmed to one weight less head.
 */
import type { MendKind } from '../../core/trim/fixing-events'
import type { Id } from '../records/scalars'
import type { Sheet } from '../sheet/sheet'
import { learnedOf } from '../stock/learned'
import type { Part, PartKind, PartOf } from '../stock/part'
import type { Shelf, Standing } from '../stock/shelf'
import { lotsOfPart } from '../stock/lots-of-part'
import type { Fitted } from './fitted'

export interface PartChange {
  readonly kind: MendKind
  /** What it takes the place of; null when it is a part more. */
  readonly was: Part | null
  readonly now: Part
  readonly fitted: Fitted
}

const MEND_KIND: Readonly<Partial<Record<PartKind, MendKind>>> = {
  wrap: 'wrap',
  vane: 'vanes',
  feather: 'vanes',
  insert: 'insert',
  'half-out': 'insert',
  outsert: 'outsert',
  'rear weight': 'rear weight',
  collar: 'collar',
  sleeve: 'sleeve',
  footing: 'sleeve',
  nock: 'nock',
}

const FIT_MM = 0.15 // two diameters that are meant for each other differ by less: common practice, no source [CP]
const fits = (a: number, b: number) => Math.abs(a - b) <= FIT_MM
const isRing = (part: Part): part is PartOf<'collar' | 'sleeve' | 'footing'> =>
  part.kind === 'collar' || part.kind === 'sleeve' || part.kind === 'footing'

/** Whether a part can stand in the place of another without anything else being changed. */
function replaces(now: Part, was: Part): boolean {
  if (now.kind !== was.kind) return false
  if ('thread' in now && 'thread' in was && now.thread !== was.thread) return false
  if (now.kind === 'nock' && was.kind === 'nock') return now.fit === was.fit
  if ('postDiameterMm' in now && 'postDiameterMm' in was) return fits(now.postDiameterMm, was.postDiameterMm)
  if (isRing(now) && isRing(was)) return fits(now.innerDiameterMm, was.innerDiameterMm)
  if (now.kind === 'outsert' && was.kind === 'outsert') return fits(now.innerDiameterMm, was.innerDiameterMm)
  return true
}

/** Whether a part can go onto an arrow that has none of its kind. */
function joins(now: Part, shaft: PartOf<'shaft'>, parts: readonly Part[]): boolean {
  if (parts.some((part) => part.kind === now.kind)) return false
  if (now.kind === 'wrap') return true
  if (isRing(now)) return !parts.some(isRing) && fits(now.innerDiameterMm, shaft.outerDiameterMm)
  if (now.kind !== 'rear weight') return false
  return parts.some((part) => part.kind === 'insert') && now.diameterMm <= shaft.innerDiameterMm
}

/** @param own the arrow's own sheet; `newLine` stands for the line of a part more, until it is fitted */
export function mendOptions(own: Sheet, shelf: Shelf, newLine: Id): readonly PartChange[] {
  const lines = own.plan.lines.flatMap((line) => {
    const part = own.parts.find(({ id }) => id === line.part)?.part
    return part === undefined ? [] : [{ line, part }]
  })
  const parts = lines.map(({ part }) => part)
  const shaft = parts.find((part) => part.kind === 'shaft')
  const onShelf = [...shelf.parts.values()].filter(({ body }) => !body.discontinued)
  const swapped = lines.flatMap(({ line, part }): readonly PartChange[] => {
    const kind = MEND_KIND[part.kind]
    if (kind === undefined) return []
    return onShelf
      .filter(({ id, body }) => id !== line.part && body.weightGr > part.weightGr && replaces(body, part))
      .map((now): PartChange => ({ kind, was: part, now: now.body, fitted: fittedOf(line.id, now, shelf, own) }))
  })
  const added = onShelf.flatMap((now): readonly PartChange[] => {
    const kind = MEND_KIND[now.body.kind]
    if (kind === undefined || shaft === undefined || !joins(now.body, shaft, parts)) return []
    return [{ kind, was: null, now: now.body, fitted: { ...fittedOf(newLine, now, shelf, own), count: 1 } }]
  })
  return [...swapped, ...added]
}

/** From the newest lot of the part. */
function fittedOf(line: Id, { id, body }: Standing<Part>, shelf: Shelf, own: Sheet): Fitted {
  const from = lotsOfPart(shelf, id).at(-1)?.id ?? null
  const isHeld = own.parts.some((each) => each.id === id) && (from === null || own.lots.some((l) => l.id === from))
  if (isHeld) return { line, part: id, lot: from }
  const held = from === null ? undefined : shelf.lots.get(from)?.body
  return {
    line,
    part: id,
    lot: from,
    copy: {
      part: body,
      lot: held ?? null,
      learned:
        from === null || own.learned.some(({ subject }) => subject === from)
          ? []
          : [...learnedOf(from, shelf.lotViews.get(from))],
    },
  }
}
