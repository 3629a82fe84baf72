/**
 * What a reading should come to, from what was read before it: the sum of weighed parts where they were weighed (then a
 * difference that neither scale nor glue explains is asked about), else the lot's or catalogue's expectation.
 */
import type { ForecastItem } from '../../core/weight/forecast-item'
import { forecastWeight } from '../../core/weight/forecast-weight'
import { difference, inGrains } from '../../core/quantity'
import type { PlanItem } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import type { PartKind } from '../stock/part'
import { finishedItems, isFrontGlueItem } from './arrow-items'
import type { BenchArrow } from './bench'
import { accepted } from './bench'
import type { DataPoint } from './data-points'
import { kindsAt, WEIGHED_TOGETHER } from './data-points'
import { isFletchedLast } from './fletched-last'
import { ownItems, ownSheet } from './own-sheet'
import { itemOf } from './reading-item'
import { shaftToCome } from './shaft-to-come'
import type { Expectation } from './slips'
import { HEAD_KINDS } from '../stock/part-places'

const ofKinds = (items: readonly PlanItem[], kinds: readonly PartKind[]) =>
  items.filter(({ at, part }) => at.kind === 'part' && kinds.includes(part.kind)).map(({ item }) => item)

const asExpectation = (items: readonly ForecastItem[]): Expectation | undefined => {
  const forecast = items.length === 0 ? undefined : forecastWeight(items)
  if (forecast?.ok !== true) return undefined
  const { value, high } = forecast.value.total
  const closure = items.every((item) => item.kind === 'read' || item.name.startsWith('glue'))
  return { value: inGrains(value), half: inGrains(difference(high, value)), closure }
}

/** The arrow as it was before these points were read. */
const before = (arrow: BenchArrow, ...points: readonly DataPoint[]): BenchArrow => ({
  ...arrow,
  readings: arrow.readings.filter((kept) => !points.includes(kept.reading.point)),
})

const LATER: readonly DataPoint[] = [
  'dryWeight',
  'dryLessHead',
  'trimWeight',
  'edgeWeight',
  'bondWeight',
  'finishedWeight',
  'weightLessHead',
]

/** Names of what is not on the arrow yet where it is fletched last. */
const fletchingNames = (items: readonly PlanItem[], sheet: Sheet): ReadonlySet<string> =>
  new Set(
    isFletchedLast(sheet.route)
      ? [...ofKinds(items, ['vane', 'feather', 'wrap']).map(({ name }) => name), 'vane, feather', 'wrap', 'glue, vanes']
      : [],
  )

/** The weight before this pass, or before the edge was broken. */
export const beforePass = (arrow: BenchArrow, point: DataPoint): number | undefined =>
  (
    (point === 'edgeWeight' ? accepted(arrow, 'edgeWeight') : undefined) ??
    accepted(arrow, 'trimWeight') ??
    accepted(arrow, 'dryWeight')
  )?.reading.value

/** @returns undefined where nothing is expected, as of a length or a run-out */
export function expectedAt(
  point: DataPoint,
  arrow: BenchArrow,
  planned: readonly PlanItem[],
  sheet: Sheet,
): Expectation | undefined {
  const items = ownItems(arrow, sheet, planned)
  const fletching = fletchingNames(items, sheet)
  const kinds = kindsAt(point)
  if (kinds !== undefined) return asExpectation(ofKinds(items, kinds))
  switch (point) {
    case 'cutWeight': {
      const shaft = items.find(({ at, part }) => at.kind === 'part' && part.kind === 'shaft')
      if (shaft === undefined) return undefined
      const toCome = shaftToCome(shaft, before(arrow, 'cutWeight'), ownSheet(arrow, sheet))
      const expected = asExpectation([toCome])
      return expected && toCome !== shaft.item ? { ...expected, fromRaw: true } : expected
    }
    case 'rawWeight': {
      const shaft = items.find(({ part }) => part.kind === 'shaft')
      const cut = asExpectation(ofKinds(items, ['shaft']))
      const { c2cIn } = ownSheet(arrow, sheet).plan
      if (cut === undefined || shaft?.part.kind !== 'shaft' || c2cIn === undefined) return undefined
      const share = shaft.part.rawLengthIn / c2cIn
      return { value: cut.value * share, half: cut.half * share, closure: false }
    }
    case 'fletchedWeight': {
      if (isFletchedLast(sheet.route))
        return asExpectation(finishedItems(before(arrow, 'fletchedWeight', 'finishedWeight'), planned, sheet))
      const all = finishedItems(before(arrow, 'fletchedWeight', ...LATER), planned, sheet)
      const front = new Set(
        WEIGHED_TOGETHER.filter(([each]) => each !== 'vanesWeight' && each !== 'wrapWeight').map(([, kinds]) =>
          kinds.join(', '),
        ),
      )
      const expectedFront = new Set(
        ofKinds(
          items,
          WEIGHED_TOGETHER.slice(0, 4).flatMap(([, kinds]) => kinds),
        ).map(({ name }) => name),
      )
      return asExpectation(
        all.filter((item) => !isFrontGlueItem(item) && !front.has(item.name) && !expectedFront.has(item.name)),
      )
    }
    case 'dryWeight':
      return asExpectation(
        finishedItems(before(arrow, ...LATER), planned, sheet).filter(
          (item) => !isFrontGlueItem(item) && !fletching.has(item.name),
        ),
      )
    case 'trimWeight':
    case 'edgeWeight': {
      // Only for a slip of unit or decimal point: how far a pass may take it is asked about by the pass itself.
      const was = beforePass(arrow, point)
      return was === undefined ? undefined : { value: was, half: was, closure: false }
    }
    case 'bondWeight':
      return asExpectation(
        finishedItems(before(arrow, 'bondWeight', 'finishedWeight'), planned, sheet).filter(
          (item) => !fletching.has(item.name),
        ),
      )
    case 'finishedWeight':
      return asExpectation(finishedItems(before(arrow, 'finishedWeight'), planned, sheet))
    case 'dryLessHead':
    case 'weightLessHead': {
      const whole = accepted(arrow, point === 'dryLessHead' ? 'dryWeight' : 'finishedWeight')
      const head = accepted(arrow, 'headWeight')
      if (whole === undefined) return undefined
      const expectedHead =
        head === undefined ? asExpectation(ofKinds(items, HEAD_KINDS)) : asExpectation([itemOf(head, 'head', sheet)])
      if (expectedHead === undefined) return undefined
      return { value: whole.reading.value - expectedHead.value, half: expectedHead.half, closure: head !== undefined }
    }
    default:
      return undefined
  }
}
