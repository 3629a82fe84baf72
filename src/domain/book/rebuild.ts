/**
 * A past build taken up again part by part: the same plan on today's shelf. A part that is no longer made gives way to the
 * first alternate that the shop has named and that is, else to the nearest of its kind; what was replaced is named, and
 * nothing else is changed.
 */
import type { ArrowBuilt } from '../bench/built'
import type { Answers } from '../call/answers'
import { QUESTION_IDS } from '../call/questions'
import type { EventBody } from '../job/events'
import type { Ids } from '../ports'
import type { Hash, Id } from '../records/scalars'
import { newEvent } from '../records/write'
import type { EventDraft } from '../records/write'
import type { Plan, PlanLine } from '../sheet/plan'
import { planFields } from '../sheet/plan'
import type { PlanField } from '../sheet/plan'
import type { Sheet } from '../sheet/sheet'
import type { Part } from '../stock/part'
import type { Shelf } from '../stock/shelf'
import { lotsOfPart } from '../stock/lots-of-part'
import { partsOfKind } from '../stock/shelf'

export interface Replacement {
  readonly was: Part
  /** Undefined: nothing of its kind is on the shelf. */
  readonly now: Part | undefined
  /** The shop has named it as what may stand in. */
  readonly named?: true
}
export interface TodaysLine {
  readonly line: PlanLine
  readonly replaced: Replacement | null
}

const weightOf = (part: Part) => (part.kind === 'shaft' ? part.weightPerInchGr : part.weightGr)
const stiffness = (part: Part) => (part.kind === 'shaft' ? part.staticSpineIn : 0)
const thread = (part: Part) => ('thread' in part ? part.thread : '')

/** How far a part is from another of its kind: stiffness first for shafts, then weight. */
const distance = (a: Part, b: Part) =>
  Math.abs(stiffness(a) - stiffness(b)) * 1000 + Math.abs(weightOf(a) - weightOf(b)) / Math.max(1, weightOf(a))

/** @param needed arrows to build: a lot that has enough for them goes before a newer one that has not */
export function todaysLines(sheet: Sheet, shelf: Shelf, needed = 1): readonly TodaysLine[] {
  return sheet.plan.lines.flatMap((line): readonly TodaysLine[] => {
    const was = sheet.parts.find(({ id }) => id === line.part)?.part
    if (was === undefined) return []
    const same = shelf.parts.get(line.part)
    if (same !== undefined && !same.body.discontinued) {
      return [{ line: { ...line, lot: lotFor(shelf, line, line.part, needed) }, replaced: null }]
    }
    const named = (same?.body ?? was).alternates
    const rankOf = (id: Id) => (named.includes(id) ? named.indexOf(id) : named.length)
    const [nearest] = partsOfKind(shelf, was.kind)
      .filter(({ body }) => !body.discontinued && thread(body) === thread(was))
      .toSorted((a, b) => rankOf(a.id) - rankOf(b.id) || distance(was, a.body) - distance(was, b.body))
    if (nearest === undefined) return [{ line: { ...line, lot: null }, replaced: { was, now: undefined } }]
    return [
      {
        line: { ...line, part: nearest.id, lot: lotFor(shelf, line, nearest.id, needed) },
        replaced: { was, now: nearest.body, ...(named.includes(nearest.id) ? { named: true } : {}) },
      },
    ]
  })
}

/** The newest lot with enough on hand; else the newest. */
function lotFor(shelf: Shelf, { count }: PlanLine, part: Id, needed: number): Id | null {
  const lots = lotsOfPart(shelf, part)
  const enough = lots.findLast(({ id }) => {
    const view = shelf.lotViews.get(id)
    return view !== undefined && view.onHand - view.reserved >= count * needed
  })
  return (enough ?? lots.at(-1))?.id ?? null
}

/** Mean finished weight of the arrows that were accepted, to a tenth; undefined when none was weighed. */
export function builtWeightGr(arrows: readonly ArrowBuilt[]): number | undefined {
  const weights = arrows
    .filter(({ outcome }) => outcome === 'accepted')
    .flatMap(
      ({ readings }) =>
        readings.findLast((kept) => kept.withdrawn === null && kept.reading.point === 'finishedWeight') ?? [],
    )
    .map(({ reading }) => reading.value)
  if (weights.length === 0) return undefined
  return Math.round((weights.reduce((total, gr) => total + gr, 0) / weights.length) * 10) / 10
}

export interface Again {
  readonly job: Id
  readonly asBuilt: Hash
  readonly sheet: Sheet
  readonly client: Id | null
  readonly answers: Answers
  readonly quantity: number
  readonly targetGr: number | undefined
}

/**
 * The events that open a rebuild job with everything carried over.
 *
 * @param today the plan that was worked out for today's shelf
 */
export function rebuildEvents(
  again: Again,
  today: Pick<Plan, 'c2cIn' | 'lines'>,
  ids: Ids,
): { readonly id: Id; readonly events: readonly EventDraft[] } {
  const id = ids.id()
  const about = { job: id }
  const { plan } = again.sheet
  const fields = (Object.keys(planFields) as PlanField[]).flatMap((field): readonly EventDraft[] => {
    const value =
      field === 'quantity'
        ? again.quantity
        : field === 'targetGr'
          ? (again.targetGr ?? plan.targetGr)
          : field === 'spares'
            ? 0
            : field === 'c2cIn'
              ? today.c2cIn
              : plan[field]
    return value === undefined ? [] : [newEvent('planSet', about, { field, value } as EventBody<'planSet'>)]
  })
  const answered = QUESTION_IDS.flatMap((question): readonly EventDraft[] => {
    const answer = again.answers[question]
    if (answer === undefined || !('value' in answer) || question === 'quantity') return []
    return [newEvent('answered', about, { question, answer: { value: answer.value, how: 'same as last time' } })]
  })
  return {
    id,
    events: [
      newEvent('opened', about, { kind: 'rebuild', of: { job: again.job, asBuilt: again.asBuilt } }),
      ...(again.client === null ? [] : [newEvent('clientSet', about, { client: again.client })]),
      ...answered,
      ...fields,
      ...today.lines.map((line) => newEvent('lineSet', about, { line: { ...line, id: ids.id() } })),
    ],
  }
}
