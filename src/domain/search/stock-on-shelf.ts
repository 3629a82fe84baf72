/**
 * The shelf as the search sees it: every lot that may be used, with what one piece is expected to weigh. The weights are
 * asked of the sheet's own model, a plan of one shaft and the part, so that search and sheet cannot tell two stories.
 */
import { inGrains } from '../../core/quantity'
import type { Id } from '../records/scalars'
import { geometryOf } from '../sheet/geometry'
import type { PlanLine } from '../sheet/plan'
import { type PlanItem, planItems } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import { learnedOf } from '../stock/learned'
import type { Part, PartKind } from '../stock/part'
import type { Shelf } from '../stock/shelf'
import { AXES } from './axes'
import { isOfKind, type StockItem, type StockItemOf } from './stock-item'
import type { Joint, JointGlue } from './wishes'

const SEARCHED: readonly PartKind[] = Object.values(AXES).flatMap(({ kinds }) => kinds)

interface Asked {
  readonly id: Id
  readonly lot: Id | null
  readonly part: Part
}

/** The weights of these parts on one arrow, as the sheet's model has them. */
function weigh(sheet: Sheet, shelf: Shelf, asked: readonly Asked[], c2cIn: number): readonly PlanItem[] {
  const lines = asked.map(({ id, lot }): PlanLine => ({ id, part: id, lot, count: 1 }))
  const parts = new Map(asked.map(({ id, part }) => [id, part]))
  const lots = asked.flatMap(({ lot }) => (lot === null ? [] : [lot]))
  const plan = { ...sheet.plan, lines, c2cIn }
  const geometry = geometryOf(plan, (id) => parts.get(id))
  if (geometry === undefined) return []
  const learned = lots.flatMap((lot) => learnedOf(lot, shelf.lotViews.get(lot)))
  const joints = sheet.learned.filter(({ what }) => what !== 'weight')
  return planItems({ ...sheet, plan, learned: [...joints, ...learned] }, geometry)
}

const told = ({ item }: PlanItem, per: number) => ({
  weightGr: inGrains(item.mean) / per,
  ownSdGr: inGrains(item.ownSd) / per,
  sharedSdGr: inGrains(item.sharedSd) / per,
})

/** Lots on hold, and lots of which nothing is free, are not on it. */
export function stockOnShelf(sheet: Sheet, shelf: Shelf): readonly StockItem[] {
  const asked = [...shelf.lots.values()].flatMap((lot): readonly (Asked & { readonly free: number })[] => {
    const part = shelf.parts.get(lot.body.part)?.body
    const view = shelf.lotViews.get(lot.id)
    const free = view === undefined ? 0 : view.onHand - view.reserved
    if (part === undefined || !SEARCHED.includes(part.kind) || lot.body.hold !== undefined || free <= 0) return []
    return [{ id: lot.body.part, lot: lot.id, part, free }]
  })
  const shaft = asked.find(({ part }) => part.kind === 'shaft')
  if (shaft?.part.kind !== 'shaft') return []
  return asked.flatMap(({ id, lot, part, free }): readonly StockItem[] => {
    const c2cIn = part.kind === 'shaft' ? part.rawLengthIn : 28
    const own = { id, lot, part }
    const items = weigh(sheet, shelf, part.kind === 'shaft' ? [own] : [{ ...shaft, lot: null }, own], c2cIn)
    const item = items.find((each) => each.line.part === id && each.at.kind === 'part')
    if (item === undefined) return []
    return [{ part: id, lot, record: part, free, ...told(item, part.kind === 'shaft' ? c2cIn : 1) }]
  })
}

/** Which parts have a joint of each kind. */
const JOINED: Readonly<Record<Joint, readonly PartKind[]>> = {
  vanes: AXES.vanes.kinds,
  post: AXES.front.kinds,
  collar: AXES.ring.kinds,
}

/** What the glues of the sheet leave at each kind of joint, for the kinds that are in stock. */
export function jointsOf(
  sheet: Sheet,
  shelf: Shelf,
  stock: readonly StockItem[],
): Readonly<Partial<Record<Joint, JointGlue>>> {
  const shaft = stock.find((item): item is StockItemOf<'shaft'> => isOfKind(item, 'shaft'))
  const glues = sheet.plan.lines.flatMap((line): readonly Asked[] => {
    const part = sheet.parts.find(({ id }) => id === line.part)?.part
    return part?.kind === 'glue' ? [{ id: line.part, lot: line.lot, part }] : []
  })
  if (shaft === undefined || glues.length === 0) return {}
  const asked = ({ part, record }: StockItem): Asked => ({ id: part, lot: null, part: record })
  return Object.fromEntries(
    (Object.keys(JOINED) as Joint[]).flatMap((joint) => {
      const joined = stock.find((item) => isOfKind(item, ...JOINED[joint]))
      if (joined === undefined) return []
      const items = weigh(sheet, shelf, [asked(shaft), asked(joined), ...glues], 28)
      const glue = items.find(({ at }) => at.kind === 'glue' && at.joint.joint === joint)
      return glue === undefined ? [] : [[joint, glueTold(glue)]]
    }),
  )
}

function glueTold(item: PlanItem): JointGlue {
  const { weightGr: gr, ownSdGr, sharedSdGr } = told(item, 1)
  return { gr, ownSdGr, sharedSdGr }
}
