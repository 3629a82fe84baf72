/** A search as the sheet asks it: the shelf, the bow and the shop's rules, with what is wished for. */
import { knownBow } from '../../core/bow/known-bow'
import { VIRTUAL_MASS_PRIOR } from '../../core/bow/virtual-mass-prior'
import { inGrains, inInches, inUnit } from '../../core/quantity'
import { callBow } from '../call/call-bow'
import type { Id } from '../records/scalars'
import { bowAnswers } from '../sheet/bow-answers'
import { fullDrawOf } from '../sheet/cut-figures'
import type { PlanLine } from '../sheet/plan'
import type { Sheet } from '../sheet/sheet'
import { reserveBandOf } from '../sheet/sheet-figures'
import type { Shelf } from '../stock/shelf'
import { type Axis, axisOf } from './axes'
import { jointsOf, stockOnShelf } from './stock-on-shelf'
import type { AxisWish, SearchProblem, Wishes } from './wishes'

export function searchProblem(sheet: Sheet, shelf: Shelf, wishes: Wishes): SearchProblem {
  const stock = stockOnShelf(sheet, shelf)
  const launch = launchOf(sheet)
  const { vaneTailIn, fletchSide, frontPoint } = sheet.plan
  return {
    stock,
    wishes,
    ...(launch === undefined ? {} : { launch }),
    build: { vaneTailIn, fletchSide, frontPoint },
    joints: jointsOf(sheet, shelf, stock),
    shop: { kerfIn: sheet.rules.kerfIn, chamferMm: sheet.rules.chamferMm },
  }
}

/** The bow's push as the sheet's figures take it; undefined without a draw weight. */
export function launchOf(sheet: Sheet): SearchProblem['launch'] {
  const bow = callBow(bowAnswers(sheet.bow))
  if (bow.peak === undefined) return undefined
  const energy = knownBow(bow.known)
  const virtual = energy.ok ? energy.value.virtualMass.value : VIRTUAL_MASS_PRIOR[bow.kind].value
  return { peakDrawLb: inUnit(bow.peak, 'lbf'), virtualMassGr: inGrains(virtual) }
}

// What is asked where nobody says otherwise: common practice, no source [CP].
const CUT_IN = { min: 26, max: 32, step: 0.25 }
const RESERVE_STEP = 0.05
const FOC_PERCENT = { min: 0, max: 50, tolerance: 0.5 }
const LEAST_CHANCE = 0.9 // below it the sheet warns
const MOST_SHOWN = 5
const VANES = [3, 4]

/** @param held lines of the plan that stay as they are; the search fills what is left open */
export function usualWishes(sheet: Sheet, held: readonly PlanLine[]): Wishes {
  const { plan, rules } = sheet
  const { min, max } = reserveBandOf(sheet)
  const clearance = clearanceOf(sheet)
  return {
    targetGr: plan.targetGr ?? Number.NaN,
    toleranceGr: rules.toleranceGr,
    overGr: rules.planOverGr,
    quantity: plan.quantity + plan.spares,
    c2cIn: CUT_IN,
    foc: FOC_PERCENT,
    reserve: { min, max, tolerance: RESERVE_STEP },
    ...(clearance === undefined ? {} : { clearance }),
    leastChance: LEAST_CHANCE,
    axes: { vanes: { counts: VANES }, ...axesHeld(sheet, held) },
    most: MOST_SHOWN,
  }
}

/** The axes as the lines that are to stay fix them: that part, from that lot where one is named. */
export function axesHeld(sheet: Sheet, held: readonly PlanLine[]): Partial<Record<Axis, AxisWish>> {
  const partOf = (id: Id) => sheet.parts.find((each) => each.id === id)?.part
  return Object.fromEntries(
    held.flatMap(({ part, lot, count }) => {
      const record = partOf(part)
      const axis = record && axisOf(record.kind)
      if (axis === undefined) return []
      return [
        [axis, { only: [{ part, ...(lot === null ? {} : { lot }) }], counts: [count], without: 'never' as const }],
      ]
    }),
  )
}

/** How far shaft front and blades must reach at full draw; undefined while nothing tells where the rest is. */
function clearanceOf({ bow, rules }: Sheet): Wishes['clearance'] {
  const at = fullDrawOf(bow)
  if (!at.ok) return undefined
  const { rest, riserFront, hand } = at.value
  const { frontAheadOfRestIn, bladesAheadOfRiserIn } = rules.clearance
  const behindBlades = Math.max(inInches(riserFront.at), hand === undefined ? 0 : inInches(hand.at))
  return { frontIn: inInches(rest.at) + frontAheadOfRestIn, bladesIn: behindBlades + bladesAheadOfRiserIn }
}
