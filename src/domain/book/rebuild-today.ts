/**
 * Today's way to a past build's numbers: the same parts where they still are, trimmed anew; where that does not come out,
 * the search looks for what does, in steps that each give up a little more. Nothing is called a match that the whole
 * arrow, worked out again by the sheet's own models, does not show to be one.
 */
import type { FoundParts } from '../search/find-parts'
import type { BrokenWish, FoundArrow } from '../search/found-arrow'
import { foundSheet } from '../search/found-sheet'
import type { SearchFinding } from '../search/findings'
import { searchProblem } from '../search/search-problem'
import type { SearchProblem } from '../search/wishes'
import type { Sheet } from '../sheet/sheet'
import { sheetFigures } from '../sheet/sheet-figures'
import { stoodOn } from '../sheet/stood-on'
import type { Part } from '../stock/part'
import type { Shelf } from '../stock/shelf'
import { axisOf, type Axis } from '../search/axes'
import { todaysLines, type Replacement } from './rebuild'
import { GIVING_UP, rebuildWishes, type GivesUp } from './rebuild-wishes'
import { isInside, thenAndNow, type Compared } from './then-and-now'

/** One way of building it today. */
export interface Stands {
  readonly sheet: Sheet
  readonly replaced: readonly Replacement[]
  readonly compared: readonly Compared[]
}

export interface Rebuilt {
  /** Today's sheet: plan, parts and lots. */
  readonly sheet: Sheet
  /** Finished weight, FOC and reserve are all as they were, inside tolerance. */
  readonly matches: boolean
  readonly compared: readonly Compared[]
  /** What was held no longer; the parts and the cut as they were: `nothing`. */
  readonly gaveUp: GivesUp | 'nothing'
  readonly replaced: readonly Replacement[]
  /** The next nearest that match as well, with what each replaces; nearest first. */
  readonly others: readonly Stands[]
  /** What the nearest arrow does not keep, where none matches. */
  readonly breaks: readonly BrokenWish[]
  readonly findings: readonly SearchFinding[]
}

export interface RebuildAsked {
  readonly past: Sheet
  /** What the arrows came out at; else what the sheet had meant. */
  readonly builtGr: number | undefined
  readonly quantity: number
}

const OTHERS = 4

/** @param find runs one search: in its thread in the app, at once in a test */
export async function rebuildToday(
  { past, builtGr, quantity }: RebuildAsked,
  shelf: Shelf,
  find: (problem: SearchProblem) => Promise<FoundParts | undefined>,
): Promise<Rebuilt> {
  const lines = todaysLines(past, shelf, quantity)
  const targetGr = builtGr ?? past.plan.targetGr
  const plan = {
    ...past.plan,
    quantity,
    spares: 0,
    lines: lines.map(({ line }) => line),
    ...(targetGr === undefined ? {} : { targetGr }),
  }
  const { rebuildOf: _, ...rest } = past
  const same: Sheet = { ...rest, plan, rules: shelf.rules, ...stoodOn(plan, shelf) }
  const judged = (sheet: Sheet) => compare(past, builtGr, sheet)
  const partByPart: Rebuilt = {
    sheet: same,
    ...judged(same),
    gaveUp: 'nothing',
    replaced: lines.flatMap(({ replaced }) => replaced ?? []),
    others: [],
    breaks: [],
    findings: [],
  }
  const isAsWished = partByPart.replaced.every(({ named }) => named)
  if (partByPart.matches && isAsWished && isStocked(same, shelf)) return partByPart

  let nearest: { readonly arrow: FoundArrow; readonly gaveUp: GivesUp } | undefined
  let findings: readonly SearchFinding[] = []
  for (const gaveUp of GIVING_UP) {
    const wishes = rebuildWishes({ past, builtGr, quantity }, shelf, gaveUp)
    if (wishes === undefined) break
    const answer = await find(searchProblem(same, shelf, wishes))
    if (answer === undefined) break
    findings = answer.findings
    const matching = answer.found.flatMap((arrow): readonly (Stands & { readonly matches: true })[] => {
      const sheet = foundSheet(same, shelf, arrow)
      const { matches, compared } = judged(sheet)
      return matches ? [{ sheet, matches, compared, replaced: replacedIn(past, sheet) }] : []
    })
    const [nearestMatch, ...others] = matching
    if (nearestMatch !== undefined)
      return { ...nearestMatch, gaveUp, others: others.slice(0, OTHERS), breaks: [], findings }
    const [miss] = answer.misses
    if (miss !== undefined) nearest = { arrow: miss, gaveUp }
  }
  // What matches part by part, with a replacement named, stands before a search that found nothing.
  if (partByPart.matches || nearest === undefined) return { ...partByPart, findings }
  const sheet = foundSheet(same, shelf, nearest.arrow)
  return {
    sheet,
    ...judged(sheet),
    gaveUp: nearest.gaveUp,
    replaced: replacedIn(past, sheet),
    others: [],
    breaks: nearest.arrow.breaks,
    findings,
  }
}

/** Every lot named has enough for the set; a part of which no lot was ever received may lie there uncounted. */
const isStocked = ({ plan, parts }: Sheet, shelf: Shelf) =>
  plan.lines.every(({ part, lot, count }) => {
    const view = lot === null ? undefined : shelf.lotViews.get(lot)
    const isGlue = parts.find(({ id }) => id === part)?.part.kind === 'glue'
    return isGlue || view === undefined || view.onHand - view.reserved >= count * plan.quantity
  })

function compare(past: Sheet, builtGr: number | undefined, sheet: Sheet): Pick<Rebuilt, 'matches' | 'compared'> {
  const worked = sheetFigures(sheet)
  if (worked === undefined) return { matches: false, compared: [] }
  const compared = thenAndNow(past, builtGr, sheet, worked)
  const judged = compared.map(isInside)
  return { compared, matches: judged.includes(true) && !judged.includes(false) && isReachable(compared) }
}

/** An arrow that is light cannot be brought to the number, whatever its figures would be there. */
const isReachable = (compared: readonly Compared[]) => {
  const { now, within } = compared.find(({ what }) => what === 'to trim') ?? {}
  return now === undefined || now >= -(within ?? 0)
}

/** Each place of the arrow whose part is another than it was. */
function replacedIn(past: Sheet, now: Sheet): readonly Replacement[] {
  const on = (sheet: Sheet) => {
    const placed = sheet.plan.lines.flatMap(({ part }): (readonly [Axis, Part, string])[] => {
      const record = sheet.parts.find(({ id }) => id === part)?.part
      const axis = record && axisOf(record.kind)
      return record === undefined || axis === undefined ? [] : [[axis, record, part]]
    })
    return new Map(placed.map(([axis, record, id]) => [axis, { record, id }]))
  }
  const before = on(past)
  const after = on(now)
  return [...before].flatMap(([axis, was]): readonly Replacement[] => {
    const is = after.get(axis)
    return is?.id === was.id ? [] : [{ was: was.record, now: is?.record }]
  })
}
