/** The plan beside what was built of it: each data point that the sheet speaks of, as planned and as read on each arrow. */
import { difference, inUnit } from '../../core/quantity'
import { forecastWeight } from '../../core/weight/forecast-weight'
import type { ArrowBuilt, KeptReading } from '../bench/built'
import { DATA_POINTS } from '../bench/data-points'
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
}

interface Told {
  readonly planned: number
  readonly half?: number
}

const OF_KIND: readonly (readonly [DataPoint, readonly PartKind[]])[] = [
  ['cutWeight', ['shaft']],
  ['nockWeight', ['nock']],
  ['vanesWeight', ['vane', 'feather']],
  ['insertWeight', ['insert', 'half-out', 'outsert']],
  ['collarWeight', ['collar', 'sleeve', 'footing']],
  ['headWeight', ['broadhead', 'field point']],
]

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
    const off = read.reduce((total, value) => total + value, 0) / read.length - told.planned
    const outside = built.flatMap((value, at) => (isOutside(value, told) ? [at] : []))
    return [{ point, unit, decimals, planned: told.planned, half: told.half, built, off, outside }]
  })
}

const HAIR = 1e-9
const isOutside = (value: number | undefined, { planned, half }: Told) =>
  value !== undefined && half !== undefined && Math.abs(value - planned) > half + HAIR

/** A dry fit has the glue of the fletch, and none of the front end yet. */
const isGluedLater = ({ at }: PlanItem) => at.kind === 'glue' && at.joint.joint !== 'vanes'

const accepted = (readings: readonly KeptReading[], point: DataPoint) =>
  readings.findLast((kept) => kept.reading.point === point && kept.withdrawn === null)?.reading.value

const POINTS = [
  'c2c',
  'cutWeight',
  'nockWeight',
  'vanesWeight',
  'insertWeight',
  'collarWeight',
  'headWeight',
  'dryWeight',
  'finishedWeight',
  'balancePoint',
] as const satisfies readonly DataPoint[]
