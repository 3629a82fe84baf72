/**
 * What one arrow on the bench weighs, line by line: what was read counts as read, a whole that was read stands in place of
 * everything inside it, the rest is expected.
 */
import type { ForecastItem } from '../../core/weight/forecast-item'
import type { PlanItem } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import type { PartKind } from '../stock/part'
import type { BenchArrow } from './bench'
import { accepted } from './bench'
import type { DataPoint } from './data-points'
import { WEIGHED_TOGETHER } from './data-points'
import { isFletchedLast } from './fletched-last'
import { ownItems, ownSheet } from './own-sheet'
import { itemOf } from './reading-item'
import { shaftToCome } from './shaft-to-come'
import { HEAD_KINDS } from '../stock/part-places'

/** The wholes, latest in the build first: reading one settles everything inside it. */
const DRY_POINTS = ['edgeWeight', 'trimWeight', 'dryWeight'] as const

export const isFrontGlueItem = ({ name }: ForecastItem) => name === 'glue, post' || name === 'glue, collar'

/** The glue still to come on the front end of this arrow. */
export const frontGlueItems = (
  arrow: Pick<BenchArrow, 'fitted'>,
  planned: readonly PlanItem[],
  sheet: Sheet,
): readonly ForecastItem[] =>
  ownItems(arrow, sheet, planned)
    .filter(isFrontGlue)
    .map((each) => each.item)

const isFrontGlue = ({ at }: PlanItem) => at.kind === 'glue' && at.joint.joint !== 'vanes'
const isVaneGlue = ({ at }: PlanItem) => at.kind === 'glue' && at.joint.joint === 'vanes'
const isOf = (kinds: readonly PartKind[]) => (each: PlanItem) =>
  each.at.kind === 'part' && kinds.includes(each.part.kind)

export function headItems(arrow: BenchArrow, planned: readonly PlanItem[], sheet: Sheet): readonly ForecastItem[] {
  const read = accepted(arrow, 'headWeight')
  if (read !== undefined) return [itemOf(read, 'head', sheet)]
  return ownItems(arrow, sheet, planned)
    .filter(isOf(HEAD_KINDS))
    .map((each) => each.item)
}

/** Items of the finished weight as it would come out if nothing more were trimmed. */
export const finishedItems = (
  arrow: BenchArrow,
  planned: readonly PlanItem[],
  sheet: Sheet,
): readonly ForecastItem[] => [
  ...itemsBeforeFletching(arrow, planned, sheet),
  ...fletchingToCome(arrow, planned, sheet),
]

const readAt = (arrow: BenchArrow, point: DataPoint, name: string, sheet: Sheet) => {
  const read = accepted(arrow, point)
  return read === undefined ? undefined : itemOf(read, name, sheet)
}
const groupOf = (
  arrow: BenchArrow,
  items: readonly PlanItem[],
  sheet: Sheet,
  [point, kinds]: (typeof WEIGHED_TOGETHER)[number],
): readonly ForecastItem[] => {
  const read = readAt(arrow, point, kinds.join(', '), sheet)
  const expected = items.filter(isOf(kinds)).map((each) => each.item)
  return read === undefined || expected.length === 0 ? expected : [read]
}
const isRear = ([, kinds]: (typeof WEIGHED_TOGETHER)[number]) => kinds.includes('vane') || kinds.includes('wrap')

/** Where the front is bonded first: vanes, wrap and their glue, until the arrow was weighed with them on. */
export function fletchingToCome(
  arrow: BenchArrow,
  planned: readonly PlanItem[],
  sheet: Sheet,
): readonly ForecastItem[] {
  const isOn = (['finishedWeight', 'fletchedWeight'] as const).some((point) => accepted(arrow, point) !== undefined)
  const isWhole = (['bondWeight', ...DRY_POINTS] as const).some((point) => accepted(arrow, point) !== undefined)
  if (!isFletchedLast(sheet.route) || isOn || !isWhole) return []
  const items = ownItems(arrow, sheet, planned)
  return [
    ...WEIGHED_TOGETHER.filter(isRear).flatMap((group) => groupOf(arrow, items, sheet, group)),
    ...items.filter(isVaneGlue).map((each) => each.item),
  ]
}

function itemsBeforeFletching(arrow: BenchArrow, planned: readonly PlanItem[], sheet: Sheet): readonly ForecastItem[] {
  const items = ownItems(arrow, sheet, planned)
  const whole = (point: DataPoint, name: string) => readAt(arrow, point, name, sheet)
  const finished = whole('finishedWeight', 'finished arrow')
  if (finished !== undefined) return [finished]
  const fletched = whole('fletchedWeight', 'fletched shaft')
  if (fletched !== undefined && isFletchedLast(sheet.route)) return [fletched]
  // Epoxy loses nothing as it cures: what was weighed wet and wiped is what it will weigh, common practice, no source [CP].
  const wet = whole('bondWeight', 'wet arrow')
  if (wet !== undefined) return [wet]
  const frontGlue = items.filter(isFrontGlue).map((each) => each.item)
  for (const point of DRY_POINTS) {
    const dry = whole(point, 'dry arrow')
    if (dry !== undefined) return [dry, ...frontGlue]
  }
  const groups = (of: readonly (typeof WEIGHED_TOGETHER)[number][]) =>
    of.flatMap((group) => groupOf(arrow, items, sheet, group))
  const front = groups(WEIGHED_TOGETHER.filter((group) => !isRear(group)))
  if (fletched !== undefined) return [fletched, ...front, ...frontGlue]
  const cut = whole('cutWeight', 'cut shaft')
  const own = ownSheet(arrow, sheet)
  const shaft = cut === undefined ? items.filter(isOf(['shaft'])).map((each) => shaftToCome(each, arrow, own)) : [cut]
  const rear = groups(WEIGHED_TOGETHER.filter(isRear))
  const vaneGlue = items.filter(isVaneGlue).map((each) => each.item)
  return [...shaft, ...rear, ...vaneGlue, ...front, ...frontGlue]
}
