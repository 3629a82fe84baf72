/**
 * The read-back was agreed: the promise is kept as it was made, the bow becomes a record, and the plan takes over
 * everything that was said, so that nothing is asked twice. What was planned since the last time it was agreed stays.
 */
import { inGrains, inInches } from '../../core/quantity'
import type { Job } from '../job/job'
import type { Ids } from '../ports'
import type { AnyFact } from '../records/read-fact'
import type { Hash } from '../records/scalars'
import type { EventBody } from '../job/events'
import type { EventDraft, Said } from '../records/write'
import { newEvent, newFact } from '../records/write'
import type { PlanField } from '../sheet/plan'
import type { Shelf } from '../stock/shelf'
import { lotsOfPart } from '../stock/lots-of-part'
import { bowOf } from './answers'
import { valueIn } from './follows'
import { headWished } from './head-wished'
import type { Implications } from './implications'
import type { Price } from './price-lines'
import type { QuestionId } from './questions'
import { NOCK_STANDOUT } from './shortest-cut'
import { toldNumber, toldText } from './told'

export interface Agreed {
  readonly job: Job
  readonly follows: Implications
  readonly price: Price
  readonly shelf: Shelf
  /** Versions of the bow's record that this one follows; empty for a bow that has none. */
  readonly bowHeads: readonly Hash[]
}

export function acceptCall(agreed: Agreed, said: Said, ids: Ids) {
  const { job, follows, price, bowHeads } = agreed
  const about = { job: job.id }
  const shipOn = valueIn(follows.ship)?.readyOn ?? null
  const bow = job.bow ?? ids.id()
  const bowFact = newFact(said, 'bow', bow, bowOf(job.answers), { parents: bowHeads })
  const facts: readonly AnyFact[] = [bowFact]
  const events: readonly EventDraft[] = [
    newEvent('accepted', about, { shipOn, priceCents: price.totalCents, currency: price.currency }),
    ...(job.bow === null ? [newEvent('bowSet', about, { bow })] : []),
    ...planned(agreed).map((change) => newEvent('planSet', about, change)),
    ...headLine(agreed, ids),
  ]
  return { facts, events }
}

type Change = EventBody<'planSet'>

/** What was said since the read-back was last agreed, or ever where it was not. */
function isNew({ job }: Agreed, ...questions: readonly QuestionId[]): boolean {
  const { accepted } = job
  return accepted === null || questions.some((id) => (job.answers[id]?.at ?? '') > accepted.at)
}

const WEIGHT_FROM = [
  'wishWeightGr',
  'guideLeastGr',
  'quarry',
  'place',
  'peakDrawWeightLb',
  'labelDrawWeightLb',
] as const
const LENGTH_FROM = [
  'drawLengthIn',
  'markAtRestIn',
  'markAtRiserIn',
  'restAheadOfPivotIn',
  'riserFrontAheadOfPivotIn',
] as const

function planned(agreed: Agreed): readonly Change[] {
  const { job, follows } = agreed
  const { answers } = job
  const working = valueIn(follows.weight)?.working
  const isCutKnown = valueIn(follows.shortest) !== undefined
  const set = (change: Change | false, ...from: readonly QuestionId[]): readonly Change[] =>
    change !== false && isNew(agreed, ...from) ? [change] : []
  const told = <F extends PlanField>(field: F, value: Change['value'] | undefined): Change | false =>
    value === undefined ? false : ({ field, value } as Change)
  const side = toldText(answers, 'fletchSide')
  return [
    ...set(told('targetGr', working && Math.round(inGrains(working) * 10) / 10), ...WEIGHT_FROM),
    ...set(told('quantity', toldNumber(answers, 'quantity')), 'quantity'),
    ...set(told('spares', toldNumber(answers, 'spares')), 'spares'),
    ...set(
      isCutKnown && told('c2cIn', Math.round((inInches(follows.likelyLength) - inInches(NOCK_STANDOUT)) * 1000) / 1000),
      ...LENGTH_FROM,
    ),
    ...set(told('fletchSide', side), 'fletchSide'),
    ...set(side === 'straight' && told('fletchDegrees', 0), 'fletchSide'),
    ...set(told('indexPlane', toldText(answers, 'indexing')), 'indexing'),
  ]
}

/** The head that was wished for, where the shelf has exactly one such and the plan has no head yet. */
function headLine(agreed: Agreed, ids: Ids): readonly EventDraft[] {
  const { job, shelf } = agreed
  const kinds = job.plan.lines.map((line) => shelf.parts.get(line.part)?.body.kind)
  if (kinds.includes('broadhead') || kinds.includes('field point')) return []
  const part = headWished(job.answers, shelf)
  if (part === undefined) return []
  const lot = lotsOfPart(shelf, part)[0]?.id ?? null
  return [newEvent('lineSet', { job: job.id }, { line: { id: ids.id(), part, lot, count: 1 } })]
}
