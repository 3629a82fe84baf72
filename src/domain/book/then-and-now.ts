/** Each figure of a past build beside the same figure of today's sheet: the difference, and whether it is inside. */
import type { Outcome } from '../../core/outcome'
import type { Dimension, Quantity, UnitOf } from '../../core/quantity'
import { inUnit } from '../../core/quantity'
import type { Unit } from '../../core/quantity'
import type { Sheet } from '../sheet/sheet'
import type { SheetFigures } from '../sheet/sheet-figures'
import { sheetFigures } from '../sheet/sheet-figures'

export interface Compared {
  readonly what: 'finished' | 'foc' | 'balance' | 'reserve' | 'speed' | 'C2C' | 'shaft' | 'to trim'
  readonly unit: Unit
  readonly decimals: number
  readonly past: number | undefined
  readonly now: number | undefined
  /** Now less then. */
  readonly difference: number | undefined
  /** How far now may be from then, in the unit; undefined is only told, not judged. */
  readonly within: number | undefined
}

/** A match is within these: the shop's tolerance, 0.2 points of FOC, 3 % of the reserve. */
export const RESERVE_SHARE = 0.03

type Answer<D extends Dimension> = Outcome<Quantity<D> | { readonly value: Quantity<D> }> | undefined
function plain<D extends Dimension>(answer: Answer<D>, unit: UnitOf<D>): number | undefined {
  if (answer?.ok !== true) return undefined
  return inUnit(typeof answer.value === 'number' ? answer.value : answer.value.value, unit)
}

/** @param builtGr what the arrows really came out at, which stands above what the sheet had meant */
export function thenAndNow(
  past: Sheet,
  builtGr: number | undefined,
  now: Sheet,
  worked: SheetFigures,
): readonly Compared[] {
  const old = sheetFigures({ ...past, plan: { ...past.plan, targetGr: builtGr ?? past.plan.targetGr } })
  const rows = (figures: SheetFigures | undefined) => {
    const f = figures?.figures
    const shaft = figures?.items.find(({ part }) => part.kind === 'shaft')
    return {
      finished: plain(f?.finished, 'gr'),
      foc: plain(f?.foc, '%'),
      balance: plain(f?.balance, 'in'),
      reserve: plain(f?.columnReserve, '1'),
      speed: plain(f?.speed, 'ft/s'),
      shaft: shaft && inUnit(shaft.item.mean, 'gr'),
      trim: plain(figures?.trim, 'gr'),
    }
  }
  const [a, b] = [rows(old), rows(worked)]
  const reserve = a.reserve === undefined ? undefined : a.reserve * RESERVE_SHARE
  const compared: readonly Omit<Compared, 'difference'>[] = [
    {
      what: 'finished',
      unit: 'gr',
      decimals: 1,
      past: builtGr ?? a.finished,
      now: b.finished,
      within: now.rules.toleranceGr,
    },
    { what: 'foc', unit: '%', decimals: 1, past: a.foc, now: b.foc, within: now.rules.focTolerancePoints },
    { what: 'reserve', unit: '1', decimals: 2, past: a.reserve, now: b.reserve, within: reserve },
    { what: 'balance', unit: 'in', decimals: 2, past: a.balance, now: b.balance, within: undefined },
    { what: 'speed', unit: 'ft/s', decimals: 1, past: a.speed, now: b.speed, within: undefined },
    { what: 'C2C', unit: 'in', decimals: 2, past: past.plan.c2cIn, now: now.plan.c2cIn, within: undefined },
    { what: 'shaft', unit: 'gr', decimals: 1, past: a.shaft, now: b.shaft, within: undefined },
    { what: 'to trim', unit: 'gr', decimals: 1, past: a.trim, now: b.trim, within: undefined },
  ]
  return compared.map((row) => ({
    ...row,
    difference: row.past === undefined || row.now === undefined ? undefined : row.now - row.past,
  }))
}

const HAIR = 1e-9
export const isInside = ({ difference, within }: Compared): boolean | undefined =>
  difference === undefined || within === undefined ? undefined : Math.abs(difference) <= within + HAIR
