/** What the builder asks of a search, as it stands in the form: a number left empty is missing, a limit is on or off. */
import { difference, feetPerSecond, inGrains, inUnit, kilograms } from '../../core/quantity'
import { knownBow } from '../../core/bow/known-bow'
import { callBow } from '../call/call-bow'
import type { Answers } from '../call/answers'
import { toldNumber, toldText } from '../call/told'
import type { Id } from '../records/scalars'
import { bowAnswers } from '../sheet/bow-answers'
import type { Sheet } from '../sheet/sheet'
import { PART_KINDS, type PartKind } from '../stock/part'
import { AXES, AXIS_NAMES, type Axis } from './axes'
import { usualWishes } from './search-problem'
import type { AxisWish, Wish, Wishes } from './wishes'

/** Chances and FOC in percent, the rest in the unit of its name. */
export interface AskedNumbers {
  readonly targetGr?: number
  readonly toleranceGr?: number
  readonly overMinGr?: number
  readonly overMaxGr?: number
  readonly quantity?: number
  readonly c2cMinIn?: number
  readonly c2cMaxIn?: number
  readonly c2cStepIn?: number
  readonly c2cAimIn?: number
  readonly focMin?: number
  readonly focMax?: number
  readonly focAim?: number
  readonly reserveMin?: number
  readonly reserveMax?: number
  readonly leastChance?: number
  readonly leastSpeedFps?: number
  readonly most?: number
}
export const LIMITS = ['FOC', 'reserve', 'clearance', 'chance'] as const
export type Limit = (typeof LIMITS)[number]

export interface Asking {
  readonly numbers: AskedNumbers
  /** Limits that count. */
  readonly on: readonly Limit[]
  /** Kinds that may be used. */
  readonly kinds: readonly PartKind[]
  /** Lines of the plan that stay as they are. */
  readonly held: readonly Id[]
}

/** Every kind that a search places on the arrow. */
export const SEARCHED_KINDS = PART_KINDS.filter((kind) =>
  AXIS_NAMES.some((axis) => (AXES[axis].kinds as readonly PartKind[]).includes(kind)),
)

export function usualAsking(sheet: Sheet, answers: Answers): Asking {
  const { targetGr, toleranceGr, overGr, quantity, c2cIn, foc, reserve, leastChance, most } = usualWishes(sheet, [])
  const wish = toldNumber(answers, 'wishFocPercent')
  const least = toldNumber(answers, 'wishSpeedFps')
  return {
    numbers: {
      ...(Number.isNaN(targetGr) ? {} : { targetGr }),
      toleranceGr,
      overMinGr: overGr.min,
      overMaxGr: overGr.max,
      quantity,
      c2cMinIn: c2cIn.min,
      c2cMaxIn: c2cIn.max,
      c2cStepIn: c2cIn.step,
      ...(sheet.plan.c2cIn === undefined ? {} : { c2cAimIn: sheet.plan.c2cIn }),
      focMin: foc!.min,
      focMax: foc!.max,
      ...(wish === undefined ? {} : { focAim: wish }),
      reserveMin: reserve!.min,
      reserveMax: reserve!.max,
      leastChance: leastChance! * PERCENT,
      ...(least === undefined ? {} : { leastSpeedFps: least }),
      most,
    },
    on: LIMITS,
    kinds: SEARCHED_KINDS.filter((kind) => !unasked(answers).includes(kind)),
    held: [],
  }
}

/** Kinds that the call did not ask for: a hunting arrow carries a broadhead, unless it says otherwise. */
function unasked(answers: Answers): readonly PartKind[] {
  const head = toldText(answers, 'headKind')
  const fletching = toldText(answers, 'fletching')
  return [
    ...(head === 'field point' ? (['broadhead'] as const) : head === 'both' ? [] : (['field point'] as const)),
    ...(fletching === 'vanes' ? (['feather'] as const) : fletching === 'feathers' ? (['vane'] as const) : []),
  ]
}

const PERCENT = 100

/** The wishes of a search; what is missing is no number, and the search says so. */
export function wishesOf(sheet: Sheet, { numbers, on, kinds, held }: Asking): Wishes {
  const usual = usualWishes(
    sheet,
    sheet.plan.lines.filter(({ id }) => held.includes(id)),
  )
  const told = (n: number | undefined) => n ?? Number.NaN
  const window = (limit: Limit, like: Wish | undefined, min?: number, max?: number, aim?: number) =>
    on.includes(limit) && like !== undefined
      ? { ...like, min: told(min), max: told(max), ...(aim === undefined ? {} : { aim }) }
      : undefined
  const foc = window('FOC', usual.foc, numbers.focMin, numbers.focMax, numbers.focAim)
  const reserve = window('reserve', usual.reserve, numbers.reserveMin, numbers.reserveMax)
  const clearance = on.includes('clearance') ? usual.clearance : undefined
  return {
    targetGr: told(numbers.targetGr),
    toleranceGr: told(numbers.toleranceGr),
    overGr: { min: told(numbers.overMinGr), max: told(numbers.overMaxGr) },
    quantity: told(numbers.quantity),
    c2cIn: {
      min: told(numbers.c2cMinIn),
      max: told(numbers.c2cMaxIn),
      step: told(numbers.c2cStepIn),
      ...(numbers.c2cAimIn === undefined ? {} : { aim: numbers.c2cAimIn }),
    },
    ...(foc === undefined ? {} : { foc }),
    ...(reserve === undefined ? {} : { reserve }),
    ...(clearance === undefined ? {} : { clearance }),
    ...(on.includes('chance') ? { leastChance: told(numbers.leastChance) / PERCENT } : {}),
    axes: axesAllowed(kinds, usual.axes ?? {}),
    most: told(numbers.most),
  }
}

/** Each axis with the kinds that are left of it; one with none left is gone without where that is possible. */
function axesAllowed(kinds: readonly PartKind[], usual: NonNullable<Wishes['axes']>): NonNullable<Wishes['axes']> {
  const limited = (axis: Axis): AxisWish => {
    const own: AxisWish = usual[axis] ?? {}
    if (own.only !== undefined) return own
    const of: readonly PartKind[] = AXES[axis].kinds
    const left = of.filter((kind) => kinds.includes(kind))
    if (left.length === of.length) return axis === 'adapter' ? { ...own, without: 'may' } : own
    const isOptional = AXES[axis].without !== 'never'
    return { ...own, kinds: left, ...(left.length === 0 && isOptional ? { without: 'must' as const } : {}) }
  }
  return Object.fromEntries(AXIS_NAMES.map((axis) => [axis, limited(axis)]))
}

/** The heaviest arrow that this bow still throws so fast, gr; undefined while nothing is known of its speed. */
export function heaviestAtSpeed(sheet: Sheet, leastFps: number): number | undefined {
  const { peak, known } = callBow(bowAnswers(sheet.bow))
  if (peak === undefined && known.chronograph?.length === 0 && known.forceDraw?.length === 0) return undefined
  const bow = knownBow(known)
  if (!bow.ok || !(leastFps > 0)) return undefined
  const { energy, virtualMass } = bow.value
  const speed = inUnit(feetPerSecond(leastFps), 'm/s')
  const moved = kilograms((2 * inUnit(energy.value, 'J')) / speed ** 2)
  return inGrains(difference(moved, virtualMass.value))
}
