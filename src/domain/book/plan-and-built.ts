/** The plan beside what was built of it: each data point that the sheet speaks of, as planned and as read on each arrow. */
import { difference, grains, inUnit } from '../../core/quantity'
import { forecastWeight } from '../../core/weight/forecast-weight'
import { lessHead } from '../../core/weight/less-head'
import type { ArrowBuilt, KeptReading } from '../bench/built'
import { DATA_POINTS, WEIGHED_TOGETHER } from '../bench/data-points'
import type { DataPoint } from '../bench/data-points'
import { lineWeights } from '../sheet/line-weights'
import type { PlanItem } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import { sheetFigures } from '../sheet/sheet-figures'
import type { PartKind } from '../stock/part'

export interface PlannedAndBuilt {
  readonly point: DataPoint
  readonly unit: 'gr' | 'in'
  readonly decimals: number
  readonly planned: number
  /** Half the width of what the plan allows, or expects (95 %). */
  readonly half: number | undefined
  /** One an arrow, in the order of the arrows given; undefined where it was not taken. */
  readonly built: readonly (number | undefined)[]
  /** Mean of what was read less the plan. */
  readonly off: number
  /** Which of the arrows given are further off than the half width; none where there is none. */
  readonly outside: readonly number[]
  /** Each arrow was held against the set's weight less head and its own head, as it was trimmed to. */
  readonly isOfOwnHead: boolean
}

interface Told {
  readonly planned: number
  readonly half?: number
}

const OF_KIND: readonly (readonly [DataPoint, readonly PartKind[]])[] = [['cutWeight', ['shaft']], ...WEIGHED_TOGETHER]

/** @returns the rows that were planned and read; none when the sheet's parts make no arrow */
export function planAndBuilt(sheet: Sheet, arrows: readonly ArrowBuilt[]): readonly PlannedAndBuilt[] {
  const worked = sheetFigures(sheet)
  if (worked === undefined) return []
  const { plan, rules } = sheet
  const lines = lineWeights(worked.items)
  const plans = new Map<DataPoint, Told>()
  if (plan.c2cIn !== undefined) plans.set('c2c', { planned: plan.c2cIn, half: 2 * rules.cutSdIn })
  for (const [point, kinds] of OF_KIND) {
    const own = plan.lines.flatMap((line) => {
      const kind = sheet.parts.find(({ id }) => id === line.part)?.part.kind
      const weight = lines.get(line.id)
      return weight === undefined || kind === undefined || !kinds.includes(kind) ? [] : [weight]
    })
    if (own.length > 0) {
      plans.set(point, {
        planned: own.reduce((total, { value }) => total + inUnit(value, 'gr'), 0),
        half: Math.hypot(...own.map(({ half }) => inUnit(half, 'gr'))),
      })
    }
  }
  const dry = forecastWeight(worked.items.flatMap((each) => (isGluedLater(each) ? [] : [each.item])))
  if (dry.ok) {
    const { value, high } = dry.value.total
    plans.set('dryWeight', { planned: inUnit(value, 'gr'), half: inUnit(difference(high, value), 'gr') })
  }
  if (plan.targetGr !== undefined) plans.set('finishedWeight', { planned: plan.targetGr, half: rules.toleranceGr })
  const balance = worked.figures?.balance
  if (balance?.ok) {
    const at = balance.value
    plans.set('balancePoint', { planned: inUnit(typeof at === 'number' ? at : at.value, 'in') })
  }
  return POINTS.flatMap((point): readonly PlannedAndBuilt[] => {
    const built = arrows.map(({ readings }) => accepted(readings, point))
    const read = built.flatMap((value) => value ?? [])
    const told = plans.get(point)
    if (told === undefined || read.length === 0) return []
    const { unit, decimals } = DATA_POINTS[point]
    const own = point === 'finishedWeight' ? ownTargets(told.planned, arrows) : undefined
    const offs = built.map((value, at) => (value === undefined ? undefined : value - (own?.[at] ?? told.planned)))
    const off = offs.reduce<number>((total, each) => total + (each ?? 0), 0) / read.length
    const outside = offs.flatMap((each, at) => (isOutside(each, told) ? [at] : []))
    const { planned, half } = told
    return [{ point, unit, decimals, planned, half, built, off, outside, isOfOwnHead: own !== undefined }]
  })
}

/** Heads differ, and every arrow of a set is trimmed to one weight less head. Undefined where a head was not read. */
function ownTargets(targetGr: number, arrows: readonly ArrowBuilt[]): readonly number[] | undefined {
  const heads = arrows.flatMap(({ readings }) => accepted(readings, 'headWeight') ?? [])
  if (heads.length < arrows.length) return undefined
  const set = lessHead(grains(targetGr), heads.map(grains))
  return set.ok ? heads.map((head) => inUnit(set.value.target, 'gr') + head) : undefined
}

const HAIR = 1e-9
const isOutside = (off: number | undefined, { half }: Told) =>
  off !== undefined && half !== undefined && Math.abs(off) > half + HAIR

/** A dry fit has the glue of the fletch, and none of the front end yet. */
const isGluedLater = ({ at }: PlanItem) => at.kind === 'glue' && at.joint.joint !== 'vanes'

const accepted = (readings: readonly KeptReading[], point: DataPoint) =>
  readings.findLast((kept) => kept.reading.point === point && kept.withdrawn === null)?.reading.value

const POINTS = [
  'c2c',
  'cutWeight',
  'nockWeight',
  'vanesWeight',
  'wrapWeight',
  'insertWeight',
  'collarWeight',
  'headWeight',
  'dryWeight',
  'finishedWeight',
  'balancePoint',
] as const satisfies readonly DataPoint[]
