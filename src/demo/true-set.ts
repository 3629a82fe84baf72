/**
 * What a set of arrows really is, behind what the bench can see: every part's true weight drawn from its expectation, and
 * the readings that a scale and a rule would give of it. For the demo shop and for simulated builds; scatter as common
 * practice has it, no source [CP].
 */
import { inGrains } from '../core/quantity'
import type { DataPoint } from '../domain/bench/data-points'
import { DATA_POINTS, kindsAt } from '../domain/bench/data-points'
import type { PlanItem } from '../domain/sheet/plan-items'
import type { Sheet } from '../domain/sheet/sheet'
import type { PartKind } from '../domain/stock/part'
import type { Dice } from './dice'

export interface TrueArrow {
  /** Grains by item key, as the parts are before anything is trimmed. */
  readonly weights: ReadonlyMap<string, number>
  /** What has come off the post so far, grains. */
  trimmedGr: number
  /** Front glue added since it was spread; below 0 it was wiped. Grains. */
  touchedGr: number
  readonly c2cIn: number
  readonly runOutIn: number
}

const SCALE_SD = 0.07 // gr, a reading of a 0.1 gr scale
/** What a scale has wandered since it was checked, an hour ago: in common to all that is weighed at one step. */
export const DRIFT_SD = 0.1 // gr
const CUT_SD = 0.01 // in
/** A pass off a steel post: mean and s.d., gr. */
export const PASSES = { light: [0.6, 0.2], usual: [1.2, 0.35], heavy: [3, 0.8] } as const

/** A touch of glue with the cloth's corner or the syringe: assumed, no source. Mean and s.d., gr. */
export const TOUCH = [0.2, 0.07] as const

export function trueSet(items: readonly PlanItem[], sheet: Sheet, count: number, dice: Dice): readonly TrueArrow[] {
  const shared = new Map<string, number>()
  for (const { item } of items) {
    if (item.sharedKey !== undefined && !shared.has(item.sharedKey)) shared.set(item.sharedKey, dice.normal(0, 1))
  }
  return Array.from({ length: count }, () => ({
    weights: new Map(
      items.map(({ key, item }) => {
        const common = item.sharedKey === undefined ? 0 : shared.get(item.sharedKey)! * inGrains(item.sharedSd)
        return [key, inGrains(item.mean) + common + dice.normal(0, inGrains(item.ownSd))]
      }),
    ),
    trimmedGr: 0,
    touchedGr: 0,
    c2cIn: (sheet.plan.c2cIn ?? 28) + dice.normal(0, CUT_SD),
    runOutIn: Math.abs(dice.normal(0.0012, 0.0006)),
  }))
}

/** Weight of the arrow's parts of these kinds, gr; of all of them when none are named. */
function weightOf(arrow: TrueArrow, items: readonly PlanItem[], kinds?: readonly PartKind[]): number {
  return items
    .filter((each) => each.at.kind === 'part' && (kinds === undefined || kinds.includes(each.part.kind)))
    .reduce((total, each) => total + arrow.weights.get(each.key)!, 0)
}
const glueOf = (arrow: TrueArrow, items: readonly PlanItem[], where: 'vanes' | 'front'): number =>
  items
    .filter((each) => each.at.kind === 'glue' && (each.at.joint.joint === 'vanes') === (where === 'vanes'))
    .reduce((total, each) => total + arrow.weights.get(each.key)!, 0)

/** The true value behind a data point, in the point's own unit, before any instrument looks at it. */
export function truth(point: DataPoint, arrow: TrueArrow, items: readonly PlanItem[], sheet: Sheet): number {
  const cut = weightOf(arrow, items, ['shaft'])
  const shaft = items.find((each) => each.part.kind === 'shaft')?.part
  const rawLength = shaft?.kind === 'shaft' ? shaft.rawLengthIn : 32
  const head = weightOf(arrow, items, ['broadhead', 'field point'])
  const dry = weightOf(arrow, items) + glueOf(arrow, items, 'vanes') - arrow.trimmedGr
  const finished = dry + glueOf(arrow, items, 'front') + arrow.touchedGr
  const kinds = point === 'cutWeight' ? (['shaft'] as const) : kindsAt(point)
  if (kinds !== undefined) return weightOf(arrow, items, kinds)
  switch (point) {
    case 'rawWeight':
      return (cut * rawLength) / (sheet.plan.c2cIn ?? rawLength)
    case 'rawLength':
      return rawLength
    case 'c2c':
      return arrow.c2cIn
    case 'cutNockEnd':
    case 'cutPointEnd':
      return (rawLength - arrow.c2cIn) / 2
    case 'fletchedWeight':
      return cut + weightOf(arrow, items, ['vane', 'feather', 'wrap']) + glueOf(arrow, items, 'vanes')
    case 'dryWeight':
    case 'trimWeight':
    case 'edgeWeight':
      return dry
    case 'dryLessHead':
      return dry - head
    case 'bondWeight':
    case 'finishedWeight':
      return finished
    case 'weightLessHead':
      return finished - head
    case 'roomTemperature':
      return 21
    default:
      return point.includes('unOut') && !point.includes('Angle') ? arrow.runOutIn : 0
  }
}

const INSTRUMENT_SD = { gr: SCALE_SD, in: 0.002, mm: 0.1, '°': 0, '°C': 0 } as const

/**
 * What the builder would type: the truth with the instrument's scatter, rounded to its step.
 * @param drift of the scale, gr
 */
export function typed(point: DataPoint, value: number, dice: Dice, drift = 0): string {
  const { unit, decimals } = DATA_POINTS[point]
  const sd = point.includes('unOut') ? 0.0001 : INSTRUMENT_SD[unit]
  return Math.max(0, dice.normal(unit === 'gr' ? value + drift : value, sd)).toFixed(decimals)
}
