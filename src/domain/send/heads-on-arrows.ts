/**
 * The finished arrows of a set without their heads, and the heads that may be screwed on: those of the order, the numbered
 * ones beside them, and the shop's field points of the same thread. What was read goes before what was planned.
 */
import { inGrains, inInches } from '../../core/quantity'
import type { Bench } from '../bench/bench'
import { accepted } from '../bench/bench'
import { ownGeometry, ownSheet } from '../bench/own-sheet'
import type { BareArrow, LooseHead } from '../search/pairing/interchange'
import type { SheetFigures } from '../sheet/sheet-figures'
import type { Sheet } from '../sheet/sheet'
import { lotExpectation } from '../stock/lot-expectation'
import type { PartOf } from '../stock/part'
import type { Shelf } from '../stock/shelf'
import { lotsOfPart } from '../stock/lots-of-part'
import { partsOfKind } from '../stock/shelf'
import { inspection } from './inspection'

type Head = PartOf<'broadhead' | 'field point'>

export interface HeadsOnArrows {
  readonly targetGr: number
  readonly arrows: readonly (BareArrow & { readonly no: number })[]
  /** Those of the order, and the numbered ones of their lots. */
  readonly ordered: readonly (LooseHead & { readonly name: string })[]
  /** One of each field point that screws in, at what its newest lot is expected to weigh. */
  readonly points: readonly (LooseHead & { readonly name: string })[]
}

/** As the elevation has it, weight is spread evenly along a head. */
const centreOf = (head: Head) => head.lengthIn / 2

const isHead = (part: { readonly kind: string }): part is Head =>
  part.kind === 'broadhead' || part.kind === 'field point'

/** @returns undefined before any arrow is finished and weighed, or where the plan has no target or no head */
export function headsOnArrows(
  bench: Bench,
  sheet: Sheet,
  worked: SheetFigures,
  shelf: Shelf,
): HeadsOnArrows | undefined {
  const { targetGr, lines } = sheet.plan
  const planned = lines.flatMap(({ part, lot }) => {
    const head = sheet.parts.find(({ id }) => id === part)?.part
    return head !== undefined && isHead(head) ? [{ head, lot }] : []
  })
  const [first] = planned
  if (targetGr === undefined || first === undefined) return undefined
  const plannedBalance = worked.figures?.balance
  const plannedIn = plannedBalance?.ok
    ? inInches(typeof plannedBalance.value === 'number' ? plannedBalance.value : plannedBalance.value.value)
    : undefined
  const finished = inspection(bench, sheet, worked).arrows.flatMap(({ arrow, finished: whole, lessHead }) => {
    const balanceIn = accepted(arrow, 'balancePoint')?.reading.value ?? plannedIn
    const geometry = ownGeometry(ownSheet(arrow, sheet)) ?? worked.geometry
    if (whole === undefined || lessHead === undefined || balanceIn === undefined) return []
    const [gr, bareGr] = [inGrains(whole), inGrains(lessHead)]
    const headGr = gr - bareGr
    const { seatIn, focLengthIn: lengthIn } = geometry
    const moment = gr * balanceIn - headGr * (seatIn + centreOf(first.head))
    return [{ headGr, own: { id: arrow.id, no: arrow.no, gr: bareGr, moment, seatIn, lengthIn } }]
  })
  if (finished.length === 0) return undefined
  const used = finished.map(({ headGr, own }) => ({
    id: own.id,
    name: `the one of no. ${own.no}`,
    gr: headGr,
    centreIn: centreOf(first.head),
  }))
  const chosen = new Set(lines.flatMap(({ no }) => no ?? []))
  const numbered = planned.flatMap(({ head, lot }) => {
    const record = lot === null ? undefined : shelf.lots.get(lot)?.body
    if (record === undefined || record.hold !== undefined) return []
    return record.numbered
      .filter(({ no }) => !chosen.has(no))
      .map(({ no, weightGr }) => ({
        id: `${record.code} ${no}`,
        name: `${head.name}, no. ${no} of lot ${record.code}`,
        gr: weightGr,
        centreIn: centreOf(head),
      }))
  })
  // A numbered head that is on an arrow has been weighed there to the same digit: it is one head, not two.
  const spare = numbered.filter(({ gr }) => !used.some((each) => Math.abs(each.gr - gr) < SAME_GR))
  return {
    targetGr,
    arrows: finished.map(({ own }) => own),
    ordered: [...used, ...spare],
    points: fieldPoints(first.head, shelf),
  }
}
const SAME_GR = 0.05

function fieldPoints(head: Head, shelf: Shelf): HeadsOnArrows['points'] {
  return partsOfKind(shelf, 'field point')
    .filter(({ body }) => body.thread === head.thread && !body.discontinued)
    .flatMap(({ id, body }) => {
      const lot = lotsOfPart(shelf, id).at(-1)
      const expected = lotExpectation(body, lot && shelf.lotViews.get(lot.id))
      if (!expected.ok) return []
      return [{ id, name: body.name, gr: inGrains(expected.value.estimate.value), centreIn: centreOf(body) }]
    })
}
