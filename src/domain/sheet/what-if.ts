/** The sheet with one thing otherwise, so that its figures can be seen before anything is changed. */
import type { Length } from '../../core/quantity'
import { difference, inches } from '../../core/quantity'
import { fullDrawOf } from './cut-figures'
import type { Sheet } from './sheet'
import type { SheetFigures } from './sheet-figures'
import { isHead } from '../stock/part-places'

export const VARIED = ['head weight', 'C2C', 'draw weight', 'finished weight'] as const
export type Varied = (typeof VARIED)[number]

export const VARIED_UNITS = { 'head weight': 'gr', C2C: 'in', 'draw weight': 'lbf', 'finished weight': 'gr' } as const

/** How far either way is looked, and in how many steps. */
export const VARIED_REACH: Readonly<Record<Varied, number>> = {
  'head weight': 100,
  C2C: 2,
  'draw weight': 10,
  'finished weight': 100,
}
const STEPS_A_SIDE = 3

const headOf = ({ parts }: Sheet) => parts.find(({ part }) => isHead(part.kind))

/** What it is now, in its unit; undefined where the sheet has none. */
export function variedNow(sheet: Sheet, what: Varied): number | undefined {
  switch (what) {
    case 'head weight':
      return headOf(sheet)?.part.weightGr
    case 'C2C':
      return sheet.plan.c2cIn
    case 'draw weight':
      return sheet.bow.peakDrawWeightLb ?? sheet.bow.labelDrawWeightLb
    case 'finished weight':
      return sheet.plan.targetGr
  }
}

/** @returns undefined where the sheet has nothing there to vary, or the value is none that could be */
export function whatIf(sheet: Sheet, what: Varied, value: number): Sheet | undefined {
  const now = variedNow(sheet, what)
  if (now === undefined || !(value > 0) || !Number.isFinite(value)) return undefined
  const { plan, bow } = sheet
  switch (what) {
    case 'head weight': {
      const head = headOf(sheet)!
      const targetGr = plan.targetGr === undefined ? {} : { targetGr: plan.targetGr + value - now }
      const lot = plan.lines.find(({ part }) => part === head.id)?.lot
      return {
        ...sheet,
        // Trimmed to its weight less head, so that the finished weight goes with the head's.
        plan: { ...plan, ...targetGr },
        parts: sheet.parts.map((each) => (each === head ? { ...each, part: { ...head.part, weightGr: value } } : each)),
        learned: sheet.learned.filter(({ subject }) => subject !== lot),
      }
    }
    case 'C2C':
      return { ...sheet, plan: { ...plan, c2cIn: value } }
    case 'draw weight':
      return { ...sheet, bow: { ...bow, peakDrawWeightLb: value } }
    case 'finished weight':
      return { ...sheet, plan: { ...plan, targetGr: value } }
  }
}

/** How far the shaft front stands ahead of the rest at full draw; undefined where nobody knows where the rest is. */
export function frontAheadOfRest({ bow }: Sheet, { geometry }: SheetFigures): Length | undefined {
  const places = fullDrawOf(bow)
  return places.ok ? difference(inches(geometry.shaftFrontIn), places.value.rest.at) : undefined
}

/** Values about one, rising, that are still above nothing. */
export const valuesAbout = (at: number, what: Varied): readonly number[] =>
  Array.from(
    { length: 2 * STEPS_A_SIDE + 1 },
    (_, i) => at + ((i - STEPS_A_SIDE) * VARIED_REACH[what]) / STEPS_A_SIDE,
  ).filter((value) => value > 0)
