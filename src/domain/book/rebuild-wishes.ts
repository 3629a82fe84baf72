/** What a rebuild asks of the search: the past build's three numbers within tolerance, and what of it is to be held. */
import { inUnit } from '../../core/quantity'
import { AXES, AXIS_NAMES, axisOf, type Axis } from '../search/axes'
import { usualWishes } from '../search/search-problem'
import type { AxisWish, Wishes } from '../search/wishes'
import type { Sheet } from '../sheet/sheet'
import { sheetFigures } from '../sheet/sheet-figures'
import type { Shelf } from '../stock/shelf'
import type { RebuildAsked } from './rebuild-today'
import { RESERVE_SHARE } from './then-and-now'

/**
 * In which order things are given up: first only the parts that are gone, then the cut, then everything that is neither
 * shaft, insert nor head, then the insert, and the shaft last. A head that is there stays.
 */
export const GIVING_UP = ['parts gone', 'the cut', 'small parts', 'the insert', 'the shaft'] as const
export type GivesUp = (typeof GIVING_UP)[number]

const OPENED: Readonly<Record<GivesUp, readonly Axis[]>> = {
  'parts gone': [],
  'the cut': [],
  'small parts': ['nock', 'bushing', 'vanes', 'wrap', 'ring', 'rear weights'],
  'the insert': ['nock', 'bushing', 'vanes', 'wrap', 'ring', 'rear weights', 'front', 'adapter'],
  'the shaft': ['nock', 'bushing', 'vanes', 'wrap', 'ring', 'rear weights', 'front', 'adapter', 'shaft'],
}
const CUT_STEP_IN = 0.125
const CUT_REACH_IN = 1

/** @returns undefined where the past build has no weight, cut or figures to come back to */
export function rebuildWishes(
  { past, builtGr, quantity }: RebuildAsked,
  shelf: Shelf,
  gaveUp: GivesUp,
): Wishes | undefined {
  const targetGr = builtGr ?? past.plan.targetGr
  const { c2cIn } = past.plan
  if (targetGr === undefined || c2cIn === undefined) return undefined
  const figures = sheetFigures({ ...past, plan: { ...past.plan, targetGr } })?.figures
  if (figures?.foc.ok !== true) return undefined
  const foc = inUnit(figures.foc.value, '%')
  const { rules } = shelf
  const points = rules.focTolerancePoints
  const told = figures.columnReserve?.ok ? figures.columnReserve.value : undefined
  const reserve = told === undefined ? undefined : inUnit(typeof told === 'number' ? told : told.value, '1')
  const usual = usualWishes({ ...past, rules }, [])
  const reach = gaveUp === 'parts gone' ? 0 : CUT_REACH_IN
  const { clearance, leastChance: _, reserve: __, ...rest } = usual
  return {
    ...rest,
    targetGr,
    quantity,
    c2cIn: { min: c2cIn - reach, max: c2cIn + reach, step: CUT_STEP_IN, aim: c2cIn },
    foc: { min: foc - points, max: foc + points, aim: foc, tolerance: points },
    ...(reserve === undefined ? {} : { reserve: within(reserve, reserve * RESERVE_SHARE) }),
    // An arrow that was shot at its length may be built at it again, whatever is estimated of the bow.
    ...(clearance === undefined || gaveUp === 'parts gone' ? {} : { clearance: noTighter(clearance, past, c2cIn) }),
    axes: Object.fromEntries(AXIS_NAMES.map((axis) => [axis, axisHeld(past, shelf, axis, quantity, OPENED[gaveUp])])),
  }
}

const within = (at: number, tolerance: number) => ({ min: at - tolerance, max: at + tolerance, aim: at, tolerance })

function noTighter(clearance: NonNullable<Wishes['clearance']>, past: Sheet, c2cIn: number) {
  const rear = sheetFigures(past)?.geometry.shaftRearIn ?? 0
  return {
    frontIn: Math.min(clearance.frontIn, rear + c2cIn),
    bladesIn: Math.min(clearance.bladesIn, rear + c2cIn),
  }
}

/** The axis as the past build had it, where its part is still made and enough of it is free; open where it is not. */
function axisHeld(past: Sheet, shelf: Shelf, axis: Axis, quantity: number, opened: readonly Axis[]): AxisWish {
  const own = past.plan.lines.filter(({ part }) => {
    const record = past.parts.find(({ id }) => id === part)?.part
    return record !== undefined && axisOf(record.kind) === axis
  })
  const [line] = own
  const isOptional = AXES[axis].without !== 'never'
  if (opened.includes(axis)) return axis === 'vanes' && line !== undefined ? { counts: [line.count] } : {}
  if (line === undefined) return isOptional ? { without: 'must' } : {}
  const counts = { counts: [line.count] }
  const part = shelf.parts.get(line.part)
  const isThere = part !== undefined && !part.body.discontinued && freeOf(shelf, line.part) >= line.count * quantity
  // A field point never stands in for a broadhead, nor the other way round.
  const kind = past.parts.find(({ id }) => id === line.part)!.part.kind
  if (!isThere) return axis === 'head' || axis === 'vanes' ? { ...counts, kinds: [kind], without: 'never' } : counts
  return { ...counts, only: [{ part: line.part }], without: 'never' }
}

/** Of the part's best stocked lot: a set is built from one. */
const freeOf = (shelf: Shelf, part: string) =>
  [...shelf.lots.values()].reduce((most, lot) => {
    const view = shelf.lotViews.get(lot.id)
    return lot.body.part !== part || view === undefined ? most : Math.max(most, view.onHand - view.reserved)
  }, 0)
