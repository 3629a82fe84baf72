/** What keeps a wish from being one: numbers that are none, windows that hold nothing, counts beyond all sense. */
import type { SearchFinding } from './findings'
import type { WishName } from './wish-names'
import type { SearchProblem, Wish } from './wishes'

type Range = readonly [min: number, max: number]
/** What a search takes, generously: a typing slip is outside, an odd wish is not. */
export const WISH_RANGES = {
  targetGr: [50, 5000],
  toleranceGr: [0.01, 100],
  overGr: [0, 1000],
  quantity: [1, 144],
  c2cIn: [8, 40],
  stepIn: [0.01, 10],
  focPercent: [-50, 100],
  reserve: [0, 100],
  tolerance: [1e-3, 1000],
  clearanceIn: [0, 60],
  chance: [0, 1],
  most: [1, 50],
  vaneTailIn: [0, 20],
  peakDrawLb: [1, 300],
  virtualMassGr: [0, 2000],
} as const satisfies Record<string, Range>

export function wishProblems({ wishes, launch, build }: SearchProblem): SearchFinding[] {
  const found: SearchFinding[] = []
  const number = (wish: WishName, at: number, [min, max]: Range) => {
    if (!Number.isFinite(at)) found.push({ code: 'wish-not-a-number', wish, at })
    else if (at < min || at > max) found.push({ code: 'wish-out-of-range', wish, at, min, max })
  }
  const window = (wish: WishName, { min, max }: Pick<Wish, 'min' | 'max'>, range: Range) => {
    number(wish, min, range)
    number(wish, max, range)
    if (min > max) found.push({ code: 'window-empty', wish, min, max })
  }
  const whole = (wish: WishName, wanted: Wish | undefined, range: Range) => {
    if (wanted === undefined) return
    window(wish, wanted, range)
    if (wanted.aim !== undefined) number(wish, wanted.aim, range)
    number(wish, wanted.tolerance, WISH_RANGES.tolerance)
  }
  const { c2cIn, clearance, leastChance } = wishes
  number('finished weight', wishes.targetGr, WISH_RANGES.targetGr)
  number('finished weight', wishes.toleranceGr, WISH_RANGES.toleranceGr)
  window('grains over target', wishes.overGr, WISH_RANGES.overGr)
  number('quantity', wishes.quantity, WISH_RANGES.quantity)
  window('cut length', c2cIn, WISH_RANGES.c2cIn)
  number('cut length', c2cIn.step, WISH_RANGES.stepIn)
  if (c2cIn.aim !== undefined) number('cut length', c2cIn.aim, WISH_RANGES.c2cIn)
  whole('FOC', wishes.foc, WISH_RANGES.focPercent)
  whole('reserve', wishes.reserve, WISH_RANGES.reserve)
  if (clearance !== undefined) {
    number('shaft front clear of the rest', clearance.frontIn, WISH_RANGES.clearanceIn)
    number('blades clear of the riser', clearance.bladesIn, WISH_RANGES.clearanceIn)
  }
  if (leastChance !== undefined) number('chance for the set', leastChance, WISH_RANGES.chance)
  number('arrows to show', wishes.most, WISH_RANGES.most)
  number('vane tail', build.vaneTailIn, WISH_RANGES.vaneTailIn)
  if (launch !== undefined) {
    number('draw weight', launch.peakDrawLb, WISH_RANGES.peakDrawLb)
    number('virtual mass', launch.virtualMassGr, WISH_RANGES.virtualMassGr)
  }
  return found
}
