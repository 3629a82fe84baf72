/** What Parts says of lots: holds, weighings, counts, builds. */
import type { Outcome } from '../../core/outcome'
import type { Mass } from '../../core/quantity'
import { difference, grains, inGrains } from '../../core/quantity'
import type { ControlLimits } from '../../core/statistics/control-limits'
import type { Slip } from '../../domain/bench/slips'
import type { HeldLot } from '../../domain/stock/held-lots'
import type { JobShare } from '../../domain/stock/job-share'
import type { Lot } from '../../domain/stock/lot'
import type { LotView } from '../../domain/stock/lot-view'
import type { Part } from '../../domain/stock/part'
import { SESSION_WEIGHT } from '../../domain/stock/take-weighing'
import type { WeighingAnswer } from '../../domain/stock/take-weighing'
import type { Weighing } from '../../domain/stock/weighing'
import { showDayAndYear } from './dates'
import { entryWords } from './entry-words'
import { counted, show, showNumber, showSigned } from './format'

export const heldWords = ({ code, part, why }: HeldLot): string =>
  `Lot ${code} (${part}) is on hold: ${why}. Look before you use it.`

export const weighingWords = ({ at, pieces, arrow }: Weighing): string =>
  `${at.slice(0, 10)}${arrow === undefined ? '' : `, arrow ${arrow}`}${pieces === 1 ? '' : `, ${pieces} together`}`

/** A lot's heading under its code: when it came, and how it stands. */
export function standsWords(lot: Lot, view: LotView | undefined): string {
  const { onHand = 0, reserved = 0, used = 0, countedAt = null } = view ?? {}
  return [
    `received ${showDayAndYear(lot.receivedOn)}`,
    ...(lot.openedOn === undefined ? [] : [`opened ${showDayAndYear(lot.openedOn)}`]),
    ...(lot.expiresOn === undefined ? [] : [`good until ${showDayAndYear(lot.expiresOn)}`]),
    `${counted(onHand, 'piece')} on hand`,
    `${showNumber(reserved, 0)} reserved`,
    `${showNumber(onHand - reserved, 0)} free`,
    `${showNumber(used, 0)} used`,
    ...(countedAt === null ? [] : [`last counted ${showDayAndYear(countedAt.slice(0, 10))}`]),
  ].join(', ')
}

export function againstCatalogue(mean: Mass, nominal: Mass, tolerance: Mass, count: number): string {
  const off = inGrains(difference(mean, nominal))
  const how = Math.abs(off) < 0.005 ? 'as the catalogue says' : `${showSigned(off, 2)} gr against the catalogue`
  return `${counted(count, 'weighing')}: on average ${how}, which allows ${show(nominal, 'gr', 1)} ± ${showNumber(inGrains(tolerance), 1)}.`
}

export function steadyWords(limits: Outcome<ControlLimits<'mass'>>, count: number): string {
  if (!limits.ok) return 'Two weighings are needed before it can be said whether the lot is steady.'
  const { beyond, lower, upper } = limits.value
  const range = `${showNumber(inGrains(lower), 2)} to ${show(upper, 'gr', 2)}`
  if (beyond.length === 0) return `Steady: ${counted(count, 'weighing')} one after another, all within ${range}.`
  const places = beyond.map((place) => `no. ${place}`).join(', ')
  return `Not steady: ${places} beyond ${range}. Look for a mixed lot or a slip; each still counts until it is set aside.`
}

export function refusedWeighing(answer: WeighingAnswer, text: string): string | undefined {
  switch (answer.kind) {
    case 'refused':
      return entryWords('Weight', answer.problem, text, SESSION_WEIGHT)
    case 'over capacity':
      return `Weight: ${show(grains(answer.weightGr), 'gr', 1)} is more than this scale weighs, ${show(grains(answer.capacityGr), 'gr', 0)}.`
    case 'taken':
    case 'asked':
      return undefined
  }
}

export function askedWords(slip: Slip): string {
  switch (slip.code) {
    case 'grams-for-grains':
      return `${showNumber(slip.value, 2)} looks like grams: about ${showNumber(slip.expected, 1)} gr was expected. Is the scale in grains?`
    case 'decimal-moved':
      return `${showNumber(slip.value, 2)} against ${showNumber(slip.expected, 1)} expected: is the point in the right place?`
    case 'unlike-the-others':
      return `${showNumber(slip.value, 1)} gr is ${showNumber(Math.abs(slip.by), 1)} gr ${slip.by > 0 ? 'heavier' : 'lighter'} than expected, further off than the others are. Is it of this lot? Once kept it counts like any other.`
    default:
      return 'Is it right?'
  }
}

export const takenWords = (weightGr: number, pieces: number, no: string | undefined): string =>
  `${show(grains(weightGr), 'gr', 1)}${no === undefined ? '' : ` as ${no}`}${pieces === 1 ? '' : ` for ${pieces}`} taken.`

/** The number after the last one: *h-4* after *h-3*. */
export function nextNumber(numbered: Lot['numbered']): string {
  const last = numbered.at(-1)?.no
  if (last === undefined) return '1'
  const found = /^(.*?)(\d+)$/.exec(last)
  return found === null ? '' : `${found[1]}${Number(found[2]) + 1}`
}

export const buildWords = ({ reserved, used, arrows }: JobShare): string =>
  [
    ...(reserved === 0 ? [] : [`${showNumber(reserved, 0)} reserved`]),
    ...(used === 0 ? [] : [`${showNumber(used, 0)} used`]),
    ...(arrows.length === 0 ? [] : [`in ${arrows.join(', ')}`]),
  ].join(', ')

export const countWords = (found: number, onHand: number): string =>
  found === onHand
    ? `${counted(found, 'piece')}, as the book had it.`
    : `${counted(found, 'piece')}; the book had ${showNumber(onHand, 0)}. The difference of ${showSigned(found - onHand, 0)} is on record.`

/** A lot in a list to choose from. */
export const lotChoiceWords = ({ code, hold }: Pick<Lot, 'code' | 'hold'>, isUsedUp: boolean): string =>
  [code, ...(hold === undefined ? [] : ['on hold']), ...(isUsedUp ? ['used up'] : [])].join(', ')

const JOINTS: Readonly<Record<'vanes joint' | 'post joint' | 'collar joint', string>> = {
  'vanes joint': 'Under the vanes, as weighed at the bench',
  'post joint': 'On the post, as weighed at the bench',
  'collar joint': 'Under the collar, as weighed at the bench',
}
export const jointWords = (what: keyof typeof JOINTS): string => JOINTS[what]

/** A row of the shelf: `7.2 ± 0.2`; a glue is no weight of its own. */
export const catalogueWords = ({ kind, weightGr, toleranceGr }: Part): string =>
  kind === 'glue' ? '' : `${showNumber(weightGr, 1)}${toleranceGr === 0 ? '' : ` ± ${showNumber(toleranceGr, 1)}`}`
