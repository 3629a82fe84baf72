/**
 * A test kit built on the bench: a small set of its own, a job beside the order it is for, in which each arrow has its own
 * shaft. What goes out to the client are its finished arrows, with the weights that were read of them.
 */
import { accepted, building } from '../bench/bench'
import { QUESTION_IDS } from '../call/questions'
import type { EventBody } from '../job/events'
import type { Job } from '../job/job'
import type { Ids } from '../ports'
import type { Hash } from '../records/scalars'
import type { EventDraft, Said } from '../records/write'
import { newEvent } from '../records/write'
import { draftSheet } from '../sheet/draft-sheet'
import { arrowCode, freeze } from '../sheet/freeze'
import type { PlanField } from '../sheet/plan'
import { planFields } from '../sheet/plan'
import { stoodOn } from '../sheet/stood-on'
import type { Shelf } from '../stock/shelf'
import type { KitProblem, KitShaft } from './kit'
import { kitProblems, numbersGiven, shaftLine } from './kit'

/** The events that open the kit's own job: client, answers and plan of the order, as many arrows as shafts. */
export function kitJob(order: Job, shafts: readonly KitShaft[], ids: Ids) {
  const id = ids.id()
  const about = { job: id }
  const fields = (Object.keys(planFields) as PlanField[]).flatMap((field): readonly EventDraft[] => {
    const value = field === 'quantity' ? shafts.length : field === 'spares' ? 0 : order.plan[field]
    return value === undefined ? [] : [newEvent('planSet', about, { field, value } as EventBody<'planSet'>)]
  })
  const answered = QUESTION_IDS.flatMap((question): readonly EventDraft[] => {
    const answer = order.answers[question]
    if (answer === undefined || !('value' in answer)) return []
    return [newEvent('answered', about, { question, answer: { value: answer.value, how: answer.how } })]
  })
  const events: readonly EventDraft[] = [
    newEvent('opened', about, { kind: 'test kit', of: null }),
    ...(order.client === null ? [] : [newEvent('clientSet', about, { client: order.client })]),
    ...answered,
    ...fields,
    ...order.plan.lines.map((line) => newEvent('lineSet', about, { line: { ...line, id: ids.id() } })),
  ]
  return { id, events }
}

interface Starting {
  readonly order: Job
  /** The job that `kitJob` opened, as it is in the book. */
  readonly kit: Job
  readonly shafts: readonly KitShaft[]
  readonly client: Hash | null
}

/** Its sheet frozen, its arrows begun, each with its own shaft; the order knows of it. @throws when `kitProblems` are open */
export function startKit({ order, kit, shafts, client }: Starting, shelf: Shelf, said: Said, ids: Ids) {
  const line = shaftLine(kit, shelf)
  if (line === undefined || kitProblems(order, shelf, shafts).length > 0) throw new Error('this kit cannot be built')
  const { facts, events: frozen } = freeze(kit, draftSheet(kit, shelf, client), said)
  const before = numbersGiven(order)
  const arrows = shafts.map(({ part, lot, c2cIn }, at) => {
    const no = before + at + 1
    return { arrow: ids.id(), no, code: arrowCode(kit.code, no), part, lot, c2cIn: c2cIn ?? order.plan.c2cIn! }
  })
  const fitted = arrows.map(({ arrow, part, lot, c2cIn }) => {
    const own = stoodOn({ ...kit.plan, lines: [{ ...line, part, lot }] }, shelf)
    const copy = { part: own.parts[0]!.part, lot: own.lots[0]?.lot ?? null, learned: [...own.learned] }
    return newEvent(
      'fitted',
      { job: kit.id, arrow },
      { line: line.id, part, lot, c2cIn, copy, reason: 'a shaft of the test kit' },
    )
  })
  const events: readonly EventDraft[] = [
    ...frozen,
    newEvent(
      'setStarted',
      { job: kit.id },
      { sheet: facts[0]!.hash, arrows: arrows.map(({ arrow, no, code }) => ({ id: arrow, no, code })) },
    ),
    ...fitted,
    newEvent('kitStarted', { job: order.id }, { kit: kit.id, arrows }),
  ]
  return { facts, events }
}

type Begun = EventBody<'kitStarted'>

/** The arrows that were not scrapped, each with its finished weight; null while it has none. */
export function builtShafts({ arrows }: Begun, kit: Job) {
  const built = kit.bench === null ? [] : building(kit.bench)
  return arrows.flatMap((each) => {
    const arrow = built.find(({ id }) => id === each.arrow)
    return arrow === undefined
      ? []
      : [{ ...each, finishedGr: accepted(arrow, 'finishedWeight')?.reading.value ?? null }]
  })
}

/** What stands against sending what the bench has made of a kit. */
export function builtKitProblems(order: Job, begun: Begun, kit: Job, shelf: Shelf): readonly KitProblem[] {
  const arrows = builtShafts(begun, kit)
  const open = arrows.flatMap(({ no, finishedGr }) =>
    finishedGr === null ? [{ code: 'not-weighed' as const, no }] : [],
  )
  return [...kitProblems(order, shelf, arrows), ...open]
}

/** @throws when something stands against it: ask `builtKitProblems` first */
export function sendBuiltKit(order: Job, begun: Begun, kit: Job, shelf: Shelf, on: string): readonly EventDraft[] {
  if (builtKitProblems(order, begun, kit, shelf).length > 0) throw new Error('this kit cannot be sent')
  return [newEvent('kitSent', { job: order.id }, { on, arrows: builtShafts(begun, kit) })]
}
