/**
 * What would bring a column reserve back into its band, one change at a time: another cut, another static spine, another
 * head. Each is tried on the whole sheet, trim and all, so that the reserve the sheet then shows lies in the band.
 */
import { rootBetween } from '../../core/numeric/root-between'
import type { Known, Outcome } from '../../core/outcome'
import { known, term } from '../../core/outcome'
import type { Length, Mass, Quantity, Ratio } from '../../core/quantity'
import { difference, grains, inches, inInches } from '../../core/quantity'
import type { CutFigures } from './cut-figures'
import type { Sheet } from './sheet'
import type { SheetFigures } from './sheet-figures'
import { reserveBandOf, sheetFigures } from './sheet-figures'
import { variedNow, whatIf } from './what-if'

export interface IntoBand {
  /** `up`: the reserve lies below its band and must rise. */
  readonly way: 'up' | 'down'
  /** Each undefined where that alone does not do it. */
  readonly c2c: Outcome<Length> | undefined
  readonly spine: Outcome<Length> | undefined
  readonly head: Outcome<Mass> | undefined
  /** The cut would stay clear at full draw; undefined where nobody knows. */
  readonly isClear: boolean | undefined
}

// How far is looked, as the call asks for them; the steps are what a saw stop, a spine tester and a shelf tell apart [CP].
const CUT = { softer: Infinity, stiffer: 16, step: 0.01 }
const SPINE = { softer: 1, stiffer: 0.1, step: 0.001 }
const HEAD = { softer: 600, stiffer: 50, step: 1 }
const HAIR = 1e-9

function reserveOf(sheet: Sheet | undefined): Known<Ratio> | undefined {
  const reserve = sheet && sheetFigures(sheet)?.figures?.columnReserve
  if (reserve?.ok !== true) return undefined
  return { ...reserve, value: typeof reserve.value === 'number' ? reserve.value : reserve.value.value }
}

function withSpine(sheet: Sheet, staticSpineIn: number): Sheet {
  const parts = sheet.parts.map((each) =>
    each.part.kind === 'shaft' ? { ...each, part: { ...each.part, staticSpineIn } } : each,
  )
  return { ...sheet, parts }
}

/** @returns undefined while there is no reserve, and where it lies in its band */
export function intoBand(sheet: Sheet, worked: SheetFigures, cut: CutFigures | undefined): IntoBand | undefined {
  const reserve = worked.figures?.columnReserve
  const band = reserveBandOf(sheet)
  if (reserve?.ok !== true) return undefined
  const value = typeof reserve.value === 'number' ? reserve.value : reserve.value.value
  if (value >= band.min && value <= band.max) return undefined
  const way = value < band.min ? 'up' : 'down'
  const wanted = way === 'up' ? band.min : band.max
  /** The nearest value, on whole steps, at which the reserve is inside. */
  const nearest = <D extends 'length' | 'mass'>(
    name: string,
    now: number | undefined,
    reach: typeof CUT,
    varied: (to: number) => Sheet | undefined,
    [as, unit]: readonly [(n: number) => Quantity<D>, 'in' | 'gr'],
  ): Outcome<Quantity<D>> | undefined => {
    if (now === undefined) return undefined
    const far = way === 'up' ? reach.stiffer : reach.softer
    const end = reserveOf(varied(far))
    const isReached = end !== undefined && (way === 'up' ? end.value >= wanted : end.value <= wanted)
    if (!isReached || (way === 'up' ? far >= now : far <= now)) return undefined
    const missAt = (to: number): Outcome<number> => {
      const at = reserveOf(varied(to)) ?? end
      return { ...at, value: at.value - wanted }
    }
    const root = rootBetween(missAt, Math.min(now, far), Math.max(now, far), reach.step / 20)
    if (!root.ok) return undefined
    const steps = root.value / reach.step
    const to = (way === 'up' ? Math.floor(steps + HAIR) : Math.ceil(steps - HAIR)) * reach.step
    const then = reserveOf(varied(to))
    if (then === undefined || then.value < band.min || then.value > band.max) return undefined
    return known(as(to), {
      equation: `reserve(${name}) = the near end of the band, to a whole step inside`,
      inputs: [term('column reserve', value, '1', 'computed'), term('end of the band', wanted, '1', 'shop rule')],
      result: [{ name, value: to, unit, origin: 'given' }, term('column reserve then', then.value, '1')],
      source: ['OWN'],
      steps: [then.derivation],
    })
  }
  const shaft = sheet.parts.find(({ part }) => part.kind === 'shaft')?.part
  const own = shaft?.kind === 'shaft' ? shaft : undefined
  const length = [inches, 'in'] as const
  const cutReach = { ...CUT, softer: own?.rawLengthIn ?? CUT.softer }
  const c2c = nearest('C2C', sheet.plan.c2cIn, cutReach, (to) => whatIf(sheet, 'C2C', to), length)
  const clear = cut?.shortest?.ok ? inInches(difference(cut.shortest.value.length, cut.rear)) : undefined
  return {
    way,
    c2c,
    spine: nearest('static spine', own?.staticSpineIn, SPINE, (to) => withSpine(sheet, to), length),
    head: nearest('head weight', variedNow(sheet, 'head weight'), HEAD, (to) => whatIf(sheet, 'head weight', to), [
      grains,
      'gr',
    ]),
    isClear: clear === undefined || c2c?.ok !== true ? undefined : inInches(c2c.value) >= clear - HAIR,
  }
}
